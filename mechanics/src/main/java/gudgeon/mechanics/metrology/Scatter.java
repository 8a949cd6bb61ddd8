package gudgeon.mechanics.metrology;

import java.util.List;

/**
 * The scatter of single readings taken in one way.
 *
 * @param standardDeviation of a single reading, 0 or more
 * @param degreesOfFreedom how many readings were more than needed, 1 or more
 */
public record Scatter(double standardDeviation, int degreesOfFreedom) {
    /**
     * Pooled from repeat readings at several places by one instrument: few readings at each place say little of their scatter,
     * all together say more (JCGM 100:2008, 4.2.4 and H.3.6).
     *
     * @param places the readings at each place, all finite; a place read once adds nothing
     * @throws IllegalArgumentException if no place was read twice
     */
    public static Scatter pooled(List<double[]> places) {
        double squares = 0;
        int freedom = 0;
        for (double[] readings : places) {
            double mean = Doubt.mean(readings);
            for (double reading : readings) {
                squares += (reading - mean) * (reading - mean);
            }
            freedom += readings.length - 1;
        }
        if (freedom == 0) {
            throw new IllegalArgumentException("scatter needs a place that was read twice");
        }
        return new Scatter(Math.sqrt(squares / freedom), freedom);
    }

    /**
     * The doubt of a mean of readings that scatter so: s/&radic;n, with the degrees of freedom of the scatter (JCGM 100:2008,
     * 4.2.3). Readings that all agree give a doubt of 0 here and are still not beyond doubt: what lies below a step of the scale
     * is in {@link Doubt#resolution}, which does not average out.
     *
     * @param readings how many, 1 or more
     */
    public Doubt ofMeanOf(int readings) {
        return new Doubt(
                Origin.REPEAT_READINGS, Distribution.NORMAL, standardDeviation / Math.sqrt(readings), degreesOfFreedom);
    }
}
