package gudgeon.mechanics.metrology;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The gauge block of JCGM 101:2008, 9.5, lengths in nanometres. Its t, arc sine and curvilinear trapezoidal inputs are
 * made from normal and rectangular deviates as in 6.4.
 */
final class GaugeBlock {
    private static final double NOMINAL = 50e6;

    /** Degrees of freedom of the standard's length, the difference, and the comparator's two errors. */
    private static final int[] DEGREES = {18, 24, 5, 8};

    private static final double[] ESTIMATE = {50.000623e6, 215, 0, 0};
    private static final double[] SCALE = {25, 6, 4, 7};

    private GaugeBlock() {}

    /** The deviates of four t variables, then one normal temperature, then six uniform deviates. */
    static List<Quantity> inputs() {
        Quantity normal = Quantity.of(0, new Doubt(Origin.STATED, Distribution.NORMAL, 1));
        List<Quantity> inputs = new ArrayList<>();
        for (int degrees : DEGREES) {
            inputs.addAll(Collections.nCopies(1 + degrees, normal));
        }
        inputs.add(Quantity.of(-0.1, new Doubt(Origin.STATED, Distribution.NORMAL, 0.2)));
        inputs.addAll(Collections.nCopies(6, Quantity.stated(0.5, 0.5)));
        return inputs;
    }

    static double departure(double[] x) {
        double standard = ESTIMATE[0];
        double length = 0;
        int next = 0;
        for (int i = 0; i < DEGREES.length; i++) {
            double value = ESTIMATE[i] + SCALE[i] * student(x, next, DEGREES[i]);
            next += 1 + DEGREES[i];
            length += value;
            standard = i == 0 ? value : standard;
        }
        double temperature = x[next] + 0.5 * Math.sin(2 * Math.PI * x[next + 1]);
        double expansion = 11.5e-6 + 2e-6 * (2 * x[next + 2] - 1);
        double expansionDifference = trapezoid(1e-6, 0.1e-6, x[next + 3], x[next + 4]);
        double temperatureDifference = trapezoid(0.050, 0.025, x[next + 5], x[next + 6]);
        return length - standard * (expansionDifference * temperature + expansion * temperatureDifference) - NOMINAL;
    }

    private static double student(double[] x, int at, int degrees) {
        double squares = 0;
        for (int i = 1; i <= degrees; i++) {
            squares += x[at + i] * x[at + i];
        }
        return x[at] / Math.sqrt(squares / degrees);
    }

    /** Rectangular between bounds that are themselves known to ± {@code loose} (6.4.3.4). */
    private static double trapezoid(double halfWidth, double loose, double first, double second) {
        double drawnHalfWidth = halfWidth + loose - 2 * loose * first;
        return drawnHalfWidth * (2 * second - 1);
    }
}
