package gudgeon.mechanics.diagnose;

import static gudgeon.mechanics.diagnose.FeltAngle.CYCLE_DEG;
import static gudgeon.mechanics.diagnose.FeltAngle.TURN_DEG;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a cause makes a crank go tight: the pairs of angles, turning forward and turning backward, at which it may, each with its
 * weight. A pair is one engine, so what is felt turning forward also says where to expect it turning backward. Immutable.
 *
 * <p>The density of what was felt is a finite mixture over the pairs; given a pair, each reading is independent: normal around the
 * pair's angle with the reading's doubt, wrapped around the circle (N. I. Fisher, <i>Statistical Analysis of Circular Data</i>,
 * Cambridge 1993, section 3.3.5), and with a small chance a slip, which may lie anywhere.
 */
public final class TightPattern {
    /** Chance that an angle written down is a slip, such as a disc read from its wrong end: an assumption of this program. */
    public static final double SLIP = 0.02;

    /** Turns of the circle to either side that a wrapped normal is summed over. */
    private static final int WRAPS = 2;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /**
     * A pair of angles.
     *
     * @param weight how likely it is against the other pairs, above 0
     * @param forwardDeg where it goes tight turning forward, in degrees
     * @param backwardDeg where it goes tight turning backward, in degrees
     */
    public record Pair(double weight, double forwardDeg, double backwardDeg) {
        public Pair {
            if (!(weight > 0 && Double.isFinite(weight) && Double.isFinite(forwardDeg + backwardDeg))) {
                throw new IllegalArgumentException("a pair has a weight above 0 and finite angles");
            }
        }

        private double angle(boolean forward) {
            return forward ? forwardDeg : backwardDeg;
        }
    }

    private final List<Pair> pairs;
    private final double periodDeg;
    private final double weight;

    private TightPattern(List<Pair> pairs, double periodDeg) {
        this.pairs = List.copyOf(pairs);
        this.periodDeg = periodDeg;
        this.weight = pairs.stream().mapToDouble(Pair::weight).sum();
    }

    /** Anywhere, each time anew: what is felt one time says nothing of the next. */
    public static TightPattern anywhere() {
        return new TightPattern(List.of(), CYCLE_DEG);
    }

    /**
     * At one of some pairs of angles.
     *
     * @param pairs one or more
     * @param everyTurn whether it comes back every turn, so that the angles count within one turn; else every second turn
     */
    public static TightPattern at(List<Pair> pairs, boolean everyTurn) {
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("a pattern needs a pair of angles");
        }
        return new TightPattern(pairs, everyTurn ? TURN_DEG : CYCLE_DEG);
    }

    /**
     * At one height of the piston, going up and coming down, which is not known: as far before a top dead centre turning forward as
     * after it turning backward.
     *
     * @param centreDeg that top dead centre in degrees, 0 or 360
     * @param leastDeg the least angle from it, 0 or more
     * @param mostDeg the greatest, from the least to 180
     * @param everyTurn whether it comes at both top dead centres
     */
    public static TightPattern symmetric(double centreDeg, double leastDeg, double mostDeg, boolean everyTurn) {
        if (!(leastDeg >= 0 && leastDeg <= mostDeg && mostDeg <= TURN_DEG / 2)) {
            throw new IllegalArgumentException("angles from a dead centre lie within 0 to 180 degrees");
        }
        List<Pair> pairs = new ArrayList<>();
        for (double from = leastDeg; from <= mostDeg; from++) {
            pairs.add(new Pair(1, centreDeg - from, centreDeg + from));
        }
        return at(pairs, everyTurn);
    }

    /**
     * At one angle of the crank, every turn, which is not known and may be anywhere.
     *
     * @param mostWideDeg how far apart the angles may be at which it is felt turning forward and backward, in degrees, 0 to 180
     */
    public static TightPattern atSomeAngle(double mostWideDeg) {
        if (!(mostWideDeg >= 0 && mostWideDeg <= TURN_DEG / 2)) {
            throw new IllegalArgumentException("a width lies within 0 to 180 degrees, got " + mostWideDeg);
        }
        List<Pair> pairs = new ArrayList<>();
        for (double at = 0; at < TURN_DEG; at += 2) {
            for (double half = 0; half <= mostWideDeg / 2; half += 2) {
                pairs.add(new Pair(1, at - half, at + half));
            }
        }
        return at(pairs, true);
    }

    /** Whether it comes back every turn, at the same angle within the turn. */
    public boolean everyTurn() {
        return periodDeg == TURN_DEG;
    }

    /** The pairs of angles; none if it can be anywhere. */
    public List<Pair> pairs() {
        return pairs;
    }

    /** Natural logarithm of the density of all that was felt, per degree of each reading's own circle. */
    public double logDensity(List<FeltAngle> felt) {
        if (pairs.isEmpty()) {
            return felt.stream()
                    .mapToDouble(reading -> -Math.log(reading.periodDeg()))
                    .sum();
        }
        double most = Double.NEGATIVE_INFINITY;
        double[] logs = new double[pairs.size()];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.log(pairs.get(i).weight() / weight);
            for (FeltAngle reading : felt) {
                logs[i] += Math.log(density(reading, pairs.get(i).angle(reading.forward())));
            }
            most = Math.max(most, logs[i]);
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return most + Math.log(sum);
    }

    private double density(FeltAngle reading, double angleDeg) {
        double circle = Math.min(periodDeg, reading.periodDeg());
        // one that comes every turn is felt in either turn of the cycle
        double share = circle / reading.periodDeg();
        return (1 - SLIP) * share * wrapped(reading.angleDeg() - angleDeg, reading.doubtDeg(), circle)
                + SLIP / reading.periodDeg();
    }

    private static double wrapped(double offDeg, double doubtDeg, double circleDeg) {
        double off = Math.IEEEremainder(offDeg, circleDeg);
        double density = 0;
        for (int turn = -WRAPS; turn <= WRAPS; turn++) {
            double z = (off + turn * circleDeg) / doubtDeg;
            density += Math.exp(-z * z / 2);
        }
        return density / (doubtDeg * ROOT_TWO_PI);
    }
}
