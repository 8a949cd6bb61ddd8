package gudgeon.mechanics.valvetrain;

import java.util.Arrays;

/**
 * A measured table of lift over the crank angle, taken as periodic over 720 degrees and interpolated by piecewise cubics that
 * never overshoot the readings (F. N. Fritsch and R. E. Carlson, Monotone Piecewise Cubic Interpolation, SIAM J. Numer. Anal. 17,
 * 1980; slopes by the weighted harmonic mean of F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5, 1984). Between the
 * last reading and the first of the next cycle the lift is that of a straight line, which is 0 where both are 0.
 */
public final class LiftTable implements Lift {
    private final double[] angle;
    private final double[] lift;
    private final double[] slope;

    /**
     * A table of readings.
     *
     * @param angleDeg three angles or more in crank degrees, rising, within 720 degrees of each other
     * @param liftMm the lift at each, 0 or more
     * @throws IllegalArgumentException if they are not so
     */
    public LiftTable(double[] angleDeg, double[] liftMm) {
        int n = angleDeg.length;
        if (n < 3 || liftMm.length != n) {
            throw new IllegalArgumentException(
                    "a lift table needs three readings or more, each an angle and a lift, got " + n + " angles and "
                            + liftMm.length + " lifts");
        }
        for (int i = 0; i < n; i++) {
            if (!(liftMm[i] >= 0) || !Double.isFinite(liftMm[i]) || !Double.isFinite(angleDeg[i])) {
                throw new IllegalArgumentException(
                        "a lift is 0 mm or more, got " + liftMm[i] + " mm at " + angleDeg[i] + " degrees");
            }
            if (i > 0 && !(angleDeg[i] > angleDeg[i - 1])) {
                throw new IllegalArgumentException(
                        "the angles of a lift table must rise, got " + angleDeg[i] + " after " + angleDeg[i - 1]);
            }
        }
        if (!(angleDeg[n - 1] - angleDeg[0] < 720)) {
            throw new IllegalArgumentException("a lift table must lie within one cycle of 720 degrees");
        }
        // one more point closes the cycle
        angle = Arrays.copyOf(angleDeg, n + 1);
        lift = Arrays.copyOf(liftMm, n + 1);
        angle[n] = angle[0] + 720;
        lift[n] = lift[0];
        slope = slopes();
    }

    /** A table of readings taken against a degree disc on the cam, which turns half as fast as the crank. */
    public static LiftTable ofCamDegrees(double[] camDeg, double[] liftMm) {
        return new LiftTable(Arrays.stream(camDeg).map(deg -> 2 * deg).toArray(), liftMm);
    }

    private double[] slopes() {
        int n = angle.length - 1;
        double[] slopes = new double[n + 1];
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            double h0 = angle[before + 1] - angle[before];
            double h1 = angle[i + 1] - angle[i];
            double d0 = (lift[before + 1] - lift[before]) / h0;
            double d1 = (lift[i + 1] - lift[i]) / h1;
            if (d0 * d1 > 0) {
                double w0 = 2 * h1 + h0;
                double w1 = h1 + 2 * h0;
                slopes[i] = (w0 + w1) / (w0 / d0 + w1 / d1);
            }
        }
        slopes[n] = slopes[0];
        return slopes;
    }

    @Override
    public double mmAt(double thetaDeg) {
        double theta = (thetaDeg - angle[0]) % 720;
        theta = angle[0] + (theta < 0 ? theta + 720 : theta);
        int low = 0;
        int high = angle.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (angle[middle] <= theta) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double h = angle[high] - angle[low];
        double t = (theta - angle[low]) / h;
        double s = 1 - t;
        double value = s * s * (1 + 2 * t) * lift[low]
                + t * t * (1 + 2 * s) * lift[high]
                + h * s * t * (s * slope[low] - t * slope[high]);
        return Math.max(0, value);
    }
}
