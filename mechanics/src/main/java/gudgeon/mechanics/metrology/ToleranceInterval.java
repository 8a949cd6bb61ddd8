package gudgeon.mechanics.metrology;

/**
 * The values that a size may have (JCGM 106:2012, 3.3.5); both ends belong to it.
 *
 * @param lower the lower tolerance limit, negative infinity where there is none
 * @param upper the upper tolerance limit, positive infinity where there is none; not below {@code lower}
 */
public record ToleranceInterval(double lower, double upper) {
    public ToleranceInterval {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("limits run from the lower to the upper, got " + lower + " to " + upper);
        }
    }

    /** Anything from a limit upward. */
    public static ToleranceInterval atLeast(double lower) {
        return new ToleranceInterval(lower, Double.POSITIVE_INFINITY);
    }

    /** Anything up to a limit. */
    public static ToleranceInterval atMost(double upper) {
        return new ToleranceInterval(Double.NEGATIVE_INFINITY, upper);
    }

    /** Whether a value lies in it. */
    public boolean holds(double value) {
        return value >= lower && value <= upper;
    }

    /** From limit to limit; infinite where one is missing. */
    public double width() {
        return upper - lower;
    }

    /** Room from a value to the nearer limit; negative outside, infinite where there is no limit. */
    public double room(double value) {
        return Math.min(value - lower, upper - value);
    }
}
