package gudgeon.mechanics.metrology;

import java.util.Arrays;

/**
 * One component of a quantity's uncertainty.
 *
 * @param origin where it comes from
 * @param distribution its distribution
 * @param standardUncertainty its standard deviation, 0 or more, in the quantity's unit
 * @param degreesOfFreedom how well the standard uncertainty itself is known, 1 or more; infinite where it follows
 *     from stated bounds (JCGM 100:2008, G.4.2 and G.4.3)
 */
public record Doubt(Origin origin, Distribution distribution, double standardUncertainty, double degreesOfFreedom) {
    private static final double SQRT_3 = Math.sqrt(3);

    public Doubt {
        if (!(standardUncertainty >= 0 && Double.isFinite(standardUncertainty))) {
            throw new IllegalArgumentException("a standard uncertainty is 0 or more, got " + standardUncertainty);
        }
        if (!(degreesOfFreedom >= 1)) {
            throw new IllegalArgumentException("degrees of freedom are 1 or more, got " + degreesOfFreedom);
        }
    }

    /** A doubt whose standard uncertainty is itself taken as certain. */
    public Doubt(Origin origin, Distribution distribution, double standardUncertainty) {
        this(origin, distribution, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /**
     * The doubt of a figure stated as "± a" with no word on what the ± means: anywhere within the bounds, equally
     * likely, so a/&radic;3 (JCGM 100:2008, 4.3.7).
     *
     * @param halfWidth a, 0 or more
     */
    public static Doubt stated(double halfWidth) {
        return new Doubt(Origin.STATED, Distribution.RECTANGULAR, halfWidth / SQRT_3);
    }

    /**
     * The doubt left by the step of a scale: the size lies within half a step either side of the reading, so
     * d/(2&radic;3) (JCGM 100:2008, F.2.2.1).
     *
     * @param step d, the least step that the scale can show, 0 or more
     */
    public static Doubt resolution(double step) {
        return new Doubt(Origin.RESOLUTION, Distribution.RECTANGULAR, step / (2 * SQRT_3));
    }

    /**
     * The doubt left by an instrument that keeps within its permissible error: a/&radic;3 (JCGM 100:2008, 4.3.7).
     *
     * @param limit a, the greatest error allowed either way, 0 or more
     */
    public static Doubt permissibleError(double limit) {
        return new Doubt(Origin.PERMISSIBLE_ERROR, Distribution.RECTANGULAR, limit / SQRT_3);
    }

    /**
     * The doubt of the mean of readings that scatter: their experimental standard deviation over &radic;n, with n - 1
     * degrees of freedom (JCGM 100:2008, 4.2.2 and 4.2.3).
     *
     * @param readings two or more, all finite
     * @throws IllegalArgumentException if there are fewer, or one is not finite
     */
    public static Doubt repeatReadings(double... readings) {
        int n = readings.length;
        if (n < 2) {
            throw new IllegalArgumentException("scatter needs two readings or more, got " + n);
        }
        double mean = mean(readings);
        double squares = 0;
        for (double reading : readings) {
            squares += (reading - mean) * (reading - mean);
        }
        return new Doubt(Origin.REPEAT_READINGS, Distribution.NORMAL, Math.sqrt(squares / (n - 1) / n), n - 1);
    }

    /** The same doubt of the quantity times {@code factor}. */
    Doubt times(double factor) {
        return new Doubt(origin, distribution, standardUncertainty * Math.abs(factor), degreesOfFreedom);
    }

    /** The mean, taken about the first reading so that equal readings give exactly their own value. */
    static double mean(double... readings) {
        double first = readings[0];
        return first + Arrays.stream(readings).map(r -> r - first).sum() / readings.length;
    }
}
