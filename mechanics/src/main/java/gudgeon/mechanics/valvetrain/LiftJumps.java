package gudgeon.mechanics.valvetrain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds readings of a lift table that jump: a valve's acceleration changes little from one reading to the next, so a reading must
 * lie close to the cubic through its two neighbours on either side (Lagrange's interpolation; F. B. Hildebrand, Introduction to
 * Numerical Analysis, 2nd ed. 1974, chapter 3). One reading that is out by e leaves e there, and -2e/3 at each neighbour where the
 * angles are evenly spaced, so that the largest of neighbours is the one to doubt.
 */
public final class LiftJumps {
    /** Cams of piecewise constant acceleration depart by up to this much at 10 degrees' spacing, in mm. */
    private static final double LEAST_MM = 0.06;
    /** How many times the table's usual departure a jump is; common practice for spotting outliers, no source. */
    private static final double TIMES_USUAL = 5;

    private LiftJumps() {}

    /**
     * A reading that jumps.
     *
     * @param index its place in the table
     * @param departureMm how far it lies above what its neighbours ask for, negative below
     */
    public record Jump(int index, double departureMm) {}

    /**
     * The readings that jump, in the order of the table.
     *
     * @param angleDeg angles, rising
     * @param liftMm the lift at each, as many
     */
    public static List<Jump> of(double[] angleDeg, double[] liftMm) {
        double[] departure = new double[liftMm.length];
        for (int i = 2; i + 2 < liftMm.length; i++) {
            departure[i] = liftMm[i] - asked(angleDeg, liftMm, i);
        }
        double limit = Math.max(LEAST_MM, TIMES_USUAL * usual(departure));
        List<Jump> jumps = new ArrayList<>();
        for (int i = 2; i + 2 < liftMm.length; i++) {
            double here = Math.abs(departure[i]);
            if (here > limit && here >= Math.abs(departure[i - 1]) && here >= Math.abs(departure[i + 1])) {
                jumps.add(new Jump(i, departure[i]));
            }
        }
        return List.copyOf(jumps);
    }

    /** The lift that the cubic through the two neighbours on either side asks for. */
    private static double asked(double[] angle, double[] lift, int i) {
        int[] neighbours = {i - 2, i - 1, i + 1, i + 2};
        double sum = 0;
        for (int j : neighbours) {
            double weight = 1;
            for (int k : neighbours) {
                if (k != j) {
                    weight *= (angle[i] - angle[k]) / (angle[j] - angle[k]);
                }
            }
            sum += weight * lift[j];
        }
        return sum;
    }

    /** The median of the departures' sizes. */
    private static double usual(double[] departure) {
        if (departure.length < 5) {
            return 0;
        }
        double[] sizes = Arrays.stream(departure, 2, departure.length - 2)
                .map(Math::abs)
                .sorted()
                .toArray();
        return sizes[sizes.length / 2];
    }
}
