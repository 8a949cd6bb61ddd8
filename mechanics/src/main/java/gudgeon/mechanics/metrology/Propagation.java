package gudgeon.mechanics.metrology;

import java.util.Arrays;

/** What Monte Carlo propagation found: the draws of a figure, in order, and what they say. */
public final class Propagation {
    /** The coverage probability of {@link #interval()}. */
    public static final double COVERAGE_PROBABILITY = 0.95;

    /** The coverage factor that goes with it for a normal distribution (JCGM 100:2008, table G.1). */
    private static final double NORMAL_COVERAGE_FACTOR = 1.96;

    /**
     * A coverage interval.
     *
     * @param low its lower end
     * @param high its upper end
     */
    public record Interval(double low, double high) {}

    private final double[] ascending;
    private final double mean;
    private final double standardUncertainty;
    private final boolean stable;

    /** Takes the array over: nobody may change it any more. */
    Propagation(double[] ascending, Moments moments, boolean stable) {
        this.ascending = ascending;
        this.mean = moments.mean();
        this.standardUncertainty = moments.standardDeviation();
        this.stable = stable;
    }

    /** The mean of the draws (JCGM 101:2008, 7.6). */
    public double mean() {
        return mean;
    }

    /** The standard deviation of the draws (JCGM 101:2008, 7.6). */
    public double standardUncertainty() {
        return standardUncertainty;
    }

    /** The probabilistically symmetric 95 % coverage interval (JCGM 101:2008, 7.7). */
    public Interval interval() {
        return interval(COVERAGE_PROBABILITY);
    }

    /**
     * The probabilistically symmetric coverage interval (JCGM 101:2008, 7.7.2).
     *
     * @param probability coverage probability, above 0 and below 1
     */
    public Interval interval(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a coverage probability lies between 0 and 1, got " + probability);
        }
        return interval(ascending, 0, ascending.length, probability);
    }

    /** How many draws were used. */
    public int draws() {
        return ascending.length;
    }

    /**
     * Whether two significant digits of the standard uncertainty were stable by the adaptive procedure; always false
     * after a run of a fixed number of draws, which does not ask.
     */
    public boolean stable() {
        return stable;
    }

    /** The share of the draws, 0 to 1, that lie below a bound: the probability that the figure does. */
    public double shareBelow(double bound) {
        int low = 0;
        int high = ascending.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ascending[middle] < bound) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) low / ascending.length;
    }

    /**
     * Whether the first-order budget of the same figure may be used in place of this propagation: both ends of its 95 %
     * interval agree with this one's to the number of significant digits of the standard uncertainty that is asked for
     * (JCGM 101:2008, 8.1).
     *
     * @param budget the first-order budget
     * @param digits significant digits, 1 or 2
     */
    public boolean confirms(Budget budget, int digits) {
        double expanded = NORMAL_COVERAGE_FACTOR * budget.standardUncertainty();
        double tolerance = tolerance(budget.standardUncertainty(), digits);
        Interval drawn = interval();
        return Math.abs(budget.value() - expanded - drawn.low()) <= tolerance
                && Math.abs(budget.value() + expanded - drawn.high()) <= tolerance;
    }

    /** The draws' ends in {@code [from, to)} of an array that is in order there (JCGM 101:2008, 7.7.2). */
    static Interval interval(double[] ascending, int from, int to, double probability) {
        int count = to - from;
        int inside = Math.min((int) (probability * count + 0.5), count - 1);
        int below = (int) ((count - inside) / 2.0 + 0.5);
        return new Interval(ascending[from + below - 1], ascending[from + below + inside - 1]);
    }

    /** Half a unit in the last of the significant digits kept of a standard uncertainty (JCGM 101:2008, 7.9.2). */
    static double tolerance(double standardUncertainty, int digits) {
        if (standardUncertainty == 0) {
            return 0;
        }
        double unit = Math.pow(10, Math.floor(Math.log10(standardUncertainty)) - (digits - 1));
        boolean roundsUp = Math.rint(standardUncertainty / unit) >= Math.pow(10, digits);
        return (roundsUp ? 10 : 1) * unit / 2;
    }

    @Override
    public String toString() {
        return "mean " + mean + ", standard uncertainty " + standardUncertainty + ", 95 % " + interval() + ", "
                + ascending.length + " draws" + (stable ? ", stable" : "");
    }

    /** Two propagations are the same if they hold the same draws to the last bit. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Propagation that
                && stable == that.stable
                && Double.compare(mean, that.mean) == 0
                && Double.compare(standardUncertainty, that.standardUncertainty) == 0
                && Arrays.equals(ascending, that.ascending);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(ascending);
    }
}
