package gudgeon.mechanics.valvetrain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How smooth a measured lift table is. A cam's acceleration changes gradually, so that each reading lies close to the cubic
 * through the two readings on either side of it (Lagrange interpolation). What is left over is the table's residual; a reading
 * that misses by much more than the others is a jump in the acceleration, most often a slip in reading the gauge.
 *
 * @param residualMm root mean square of the readings' misses, in mm
 * @param jumps the readings that jump
 */
public record LiftReadings(double residualMm, List<Jump> jumps) {
    /** A miss below this, in mm, is never called a jump: the end of a ramp makes as much (common practice, no source). */
    private static final double LEAST_JUMP_MM = 0.1;

    /** A jump misses by this many times the usual miss. */
    private static final double TIMES_USUAL = 8;

    /** Scales a median absolute deviation to a standard deviation for normal errors. */
    private static final double MAD_TO_SIGMA = 1.4826;

    /**
     * A reading that jumps.
     *
     * @param index its place in the table, from 0
     * @param byMm how far it lies above the curve through its neighbours
     */
    public record Jump(int index, double byMm) {}

    public LiftReadings {
        jumps = List.copyOf(jumps);
    }

    /**
     * Looks at a table.
     *
     * @param angleDeg rising crank angles
     * @param liftMm the lift at each
     */
    public static LiftReadings of(double[] angleDeg, double[] liftMm) {
        int n = angleDeg.length;
        if (n < 5 || liftMm.length != n) {
            return new LiftReadings(0, List.of());
        }
        double[] miss = new double[n];
        double squares = 0;
        for (int i = 2; i < n - 2; i++) {
            miss[i] = liftMm[i] - throughNeighbours(angleDeg, liftMm, i);
            squares += miss[i] * miss[i];
        }
        double[] sizes = Arrays.stream(miss, 2, n - 2).map(Math::abs).sorted().toArray();
        double usual = MAD_TO_SIGMA * sizes[sizes.length / 2];
        double most = Math.max(LEAST_JUMP_MM, TIMES_USUAL * usual);
        List<Jump> jumps = new ArrayList<>();
        for (int i = 2; i < n - 2; i++) {
            double size = Math.abs(miss[i]);
            // a slip drags its neighbours' curves along; the slip itself misses most
            if (size > most && size >= Math.abs(miss[i - 1]) && size > Math.abs(miss[i + 1])) {
                jumps.add(new Jump(i, miss[i]));
            }
        }
        return new LiftReadings(Math.sqrt(squares / (n - 4)), jumps);
    }

    private static double throughNeighbours(double[] x, double[] y, int i) {
        int[] others = {i - 2, i - 1, i + 1, i + 2};
        double value = 0;
        for (int j : others) {
            double weight = 1;
            for (int k : others) {
                if (k != j) {
                    weight *= (x[i] - x[k]) / (x[j] - x[k]);
                }
            }
            value += weight * y[j];
        }
        return value;
    }
}
