package gudgeon.mechanics.metrology;

/**
 * Count, mean and sum of squared departures from the mean of some values. Joining two in the same order always gives the
 * same bits, so that blocks worked out on any number of threads add up alike.
 *
 * @param count how many values
 * @param mean their mean
 * @param squares the sum of their squared departures from it
 */
record Moments(int count, double mean, double squares) {
    static final Moments NONE = new Moments(0, 0, 0);

    /** Of the values in {@code [from, to)}, in two passes. */
    static Moments of(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i] - values[from];
        }
        double mean = values[from] + sum / (to - from);
        double squares = 0;
        for (int i = from; i < to; i++) {
            squares += (values[i] - mean) * (values[i] - mean);
        }
        return new Moments(to - from, mean, squares);
    }

    /** Of a single value. */
    static Moments of(double value) {
        return new Moments(1, value, 0);
    }

    /** Of these values and those together (Chan, Golub and LeVeque, The American Statistician 37 (1983), 242-247). */
    Moments and(Moments more) {
        if (count == 0) {
            return more;
        }
        double apart = more.mean - mean;
        double part = (double) more.count / (count + more.count);
        return new Moments(
                count + more.count, mean + apart * part, squares + more.squares + apart * apart * part * count);
    }

    /** The standard deviation, estimated with {@code count - 1}. */
    double standardDeviation() {
        return Math.sqrt(squares / (count - 1));
    }

    /** The standard deviation of the mean. */
    double standardDeviationOfMean() {
        return standardDeviation() / Math.sqrt(count);
    }
}
