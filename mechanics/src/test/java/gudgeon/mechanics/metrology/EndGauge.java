package gudgeon.mechanics.metrology;

import java.util.List;

/** The end gauge of JCGM 100:2008, H.1, lengths in nanometres. */
final class EndGauge {
    private static final double NOMINAL = 50e6;

    private EndGauge() {}

    /** Table H.1: length of the standard, difference, its expansion, difference in expansion, temperatures. */
    static List<Quantity> inputs() {
        return List.of(
                normal(50.000623e6, 25, 18),
                difference(),
                bounds(11.5e-6, 2e-6, Double.POSITIVE_INFINITY),
                bounds(0, 1e-6, 50),
                normal(-0.1, 0.41, Double.POSITIVE_INFINITY),
                bounds(0, 0.05, 2));
    }

    /** H.1.3.2: scatter of five comparisons, random and systematic error of the comparator. */
    static Quantity difference() {
        return Quantity.of(
                215,
                new Doubt(Origin.REPEAT_READINGS, Distribution.NORMAL, 5.8, 24),
                new Doubt(Origin.STATED, Distribution.NORMAL, 3.9, 5),
                new Doubt(Origin.STATED, Distribution.NORMAL, 6.7, 8));
    }

    /** Departure from 50 mm by equation (H.3). */
    static double departure(double[] x) {
        return x[0] + x[1] - x[0] * (x[3] * x[4] + x[2] * x[5]) - NOMINAL;
    }

    private static Quantity normal(double value, double u, double degreesOfFreedom) {
        return Quantity.of(value, new Doubt(Origin.STATED, Distribution.NORMAL, u, degreesOfFreedom));
    }

    private static Quantity bounds(double value, double halfWidth, double degreesOfFreedom) {
        double u = halfWidth / Math.sqrt(3);
        return Quantity.of(value, new Doubt(Origin.STATED, Distribution.RECTANGULAR, u, degreesOfFreedom));
    }
}
