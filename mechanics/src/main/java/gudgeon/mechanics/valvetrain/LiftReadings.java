package gudgeon.mechanics.valvetrain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How smooth a measured lift table is. A valve's acceleration changes little from one reading to the next, so that each reading
 * lies close to the cubic through its two neighbours on either side (Lagrange's interpolation; F. B. Hildebrand, Introduction to
 * Numerical Analysis, 2nd ed. 1974, chapter 3). One reading that is out by e departs by e, and at even spacing each neighbour by
 * -2e/3, so that the largest of neighbours is the one to doubt. A table that begins or ends at no lift is taken to stay there.
 *
 * @param residualMm root mean square of the departures in mm; for independent errors in evenly spaced readings 1.4 times their
 *     standard deviation; 0 if there are fewer than five readings to compare
 * @param jumps the readings that jump, in the order of the table
 */
public record LiftReadings(double residualMm, List<Jump> jumps) {
    /** Never called a jump, in mm: cams of piecewise constant acceleration depart by as much at 10 degrees' spacing. */
    private static final double LEAST_MM = 0.06;

    /** How many times the table's median departure a jump is, 4 standard deviations; common practice, no source. */
    private static final double TIMES_USUAL = 6;

    /**
     * A reading that jumps.
     *
     * @param index its place in the table, from 0
     * @param byMm how far it lies above what its neighbours ask for, negative below
     */
    public record Jump(int index, double byMm) {}

    public LiftReadings {
        jumps = List.copyOf(jumps);
    }

    /**
     * Looks at a table.
     *
     * @param angleDeg angles in degrees, rising
     * @param liftMm the lift at each, as many
     * @throws IllegalArgumentException if there are not as many lifts as angles
     */
    public static LiftReadings of(double[] angleDeg, double[] liftMm) {
        int n = angleDeg.length;
        if (liftMm.length != n) {
            throw new IllegalArgumentException(
                    "a lift table needs as many lifts as angles, got " + n + " angles and " + liftMm.length + " lifts");
        }
        if (n < 5) {
            return new LiftReadings(0, List.of());
        }
        int before = liftMm[0] == 0 ? 2 : 0;
        int after = liftMm[n - 1] == 0 ? 2 : 0;
        double[] angle = new double[before + n + after];
        double[] lift = new double[before + n + after];
        System.arraycopy(angleDeg, 0, angle, before, n);
        System.arraycopy(liftMm, 0, lift, before, n);
        for (int i = 1; i <= before; i++) {
            angle[before - i] = angleDeg[0] - i * (angleDeg[1] - angleDeg[0]);
        }
        for (int i = 1; i <= after; i++) {
            angle[before + n - 1 + i] = angleDeg[n - 1] + i * (angleDeg[n - 1] - angleDeg[n - 2]);
        }
        return ofDepartures(departures(angle, lift), before);
    }

    private static LiftReadings ofDepartures(double[] departure, int before) {
        double[] sizes = Arrays.stream(departure, 2, departure.length - 2)
                .map(Math::abs)
                .sorted()
                .toArray();
        double limit = Math.max(LEAST_MM, TIMES_USUAL * sizes[sizes.length / 2]);
        List<Jump> jumps = new ArrayList<>();
        for (int i = 2; i + 2 < departure.length; i++) {
            double here = Math.abs(departure[i]);
            if (here > limit && here >= Math.abs(departure[i - 1]) && here > Math.abs(departure[i + 1])) {
                jumps.add(new Jump(i - before, departure[i]));
            }
        }
        double squares = Arrays.stream(sizes).map(size -> size * size).sum();
        return new LiftReadings(Math.sqrt(squares / sizes.length), jumps);
    }

    private static double[] departures(double[] angle, double[] lift) {
        double[] departure = new double[lift.length];
        for (int i = 2; i + 2 < lift.length; i++) {
            departure[i] = lift[i] - throughNeighbours(angle, lift, i);
        }
        return departure;
    }

    private static double throughNeighbours(double[] angle, double[] lift, int i) {
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
}
