package gudgeon.mechanics.chamber;

/**
 * The crown before pockets are cut, as a solid: the top land's cylinder, closed above by flat, dome or dish. Lengths in mm, in the
 * crown's frame. Not for use by two threads at once: it keeps the last line it was asked about.
 */
final class BaseSolid {
    /** Squared sine of an angle to the axis below which a line counts as parallel to it. */
    private static final double PARALLEL = 1e-14;

    private final double landRadius;
    private final boolean domed;
    private final boolean dished;
    private final double sphereRadius;
    private final double sphereZ;
    /** Height of the highest metal. */
    final double highest;

    /** Where the last line was in metal: at most two intervals. */
    final double[] from = new double[2];

    final double[] to = new double[2];
    int intervals;

    // where the last line was within a cylinder or sphere
    private double enter;
    private double leave;

    BaseSolid(Crown crown) {
        landRadius = crown.landDiameterMm() / 2;
        if (crown.form() instanceof CrownForm.Dome dome) {
            sphereRadius = dome.sphereRadiusMm();
            sphereZ = dome.sphereCentreMm();
            highest = dome.heightMm();
            domed = true;
            dished = false;
        } else if (crown.form() instanceof CrownForm.Dish dish) {
            sphereRadius = dish.sphereRadiusMm();
            sphereZ = dish.sphereCentreMm();
            highest = 0;
            domed = false;
            dished = true;
        } else {
            sphereRadius = 0;
            sphereZ = 0;
            highest = 0;
            domed = false;
            dished = false;
        }
    }

    /** Whether the last line was in metal anywhere beyond s. */
    boolean metalAbove(double s) {
        return intervals > 0 && to[intervals - 1] > s;
    }

    /** Finds where the line from a point along an upward unit vector is in metal, in order. */
    void cross(double x, double y, double z, double wx, double wy, double wz) {
        intervals = 0;
        solve(wx * wx + wy * wy, x * wx + y * wy, besideLand(x, y));
        double landFrom = enter;
        double landTo = leave;
        if (landFrom >= landTo) {
            return;
        }
        double plane = -z / wz;
        if (domed || dished) {
            double dz = z - sphereZ;
            solve(1, x * wx + y * wy + dz * wz, x * x + y * y + dz * dz - sphereRadius * sphereRadius);
        }
        if (domed && leave > enter && leave > plane) {
            // up through the plane inside the dome's base, or through the flat around it and then the dome
            add(landFrom, Math.min(landTo, enter <= plane ? leave : plane));
            if (enter > plane) {
                add(Math.max(landFrom, enter), Math.min(landTo, leave));
            }
        } else if (dished && leave > enter && enter < plane) {
            add(landFrom, Math.min(landTo, enter));
            add(Math.max(landFrom, leave), Math.min(landTo, plane));
        } else {
            add(landFrom, Math.min(landTo, plane));
        }
    }

    /** Squared distance of a point from the bore axis, less the land's squared radius. */
    double besideLand(double x, double y) {
        return x * x + y * y - landRadius * landRadius;
    }

    /** Above 0 when the line from a point along a unit vector cuts the land's cylinder; a quadratic in the point. */
    double cutsLand(double x, double y, double wx, double wy) {
        double a = wx * wx + wy * wy;
        double b = x * wx + y * wy;
        double c = besideLand(x, y);
        return a < PARALLEL ? -c : b * b - a * c;
    }

    /** Above 0 when the line from a point along a unit vector cuts the sphere of dome or dish; a quadratic in the point. */
    double cutsSphere(double x, double y, double z, double wx, double wy, double wz) {
        double dz = z - sphereZ;
        double b = x * wx + y * wy + dz * wz;
        return b * b - (x * x + y * y + dz * dz - sphereRadius * sphereRadius);
    }

    private void add(double start, double end) {
        if (end > start) {
            from[intervals] = start;
            to[intervals++] = end;
        }
    }

    /** Sets enter and leave to where a s^2 + 2 b s + c is below 0. */
    private void solve(double a, double b, double c) {
        enter = Double.NEGATIVE_INFINITY;
        leave = Double.POSITIVE_INFINITY;
        if (a < PARALLEL) {
            if (c >= 0) {
                leave = enter;
            }
            return;
        }
        double square = b * b - a * c;
        if (square <= 0) {
            leave = enter;
            return;
        }
        double root = Math.sqrt(square);
        enter = (-b - root) / a;
        leave = (-b + root) / a;
    }
}
