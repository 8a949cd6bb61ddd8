package gudgeon.mechanics.chamber;

/**
 * The space a pocket's cutter swept, in the crown's frame: a cylinder that begins at the floor and goes up along its axis without
 * end. Lengths in mm. Not for use by two threads at once: it keeps the last line it was asked about.
 */
final class PocketSpace {
    /** Squared sine of an angle below which a line counts as parallel to the axis. */
    private static final double PARALLEL = 1e-14;

    final double radius;
    /** The axis, a unit vector that points up and out of the pocket. */
    final double ux;

    final double uy;
    final double uz;
    /** Centre of the floor. */
    final double fx;

    final double fy;
    final double fz;
    /** The azimuth's direction in the plane, and along the floor. */
    final double cosAzimuth;

    final double sinAzimuth;
    final double ax;
    final double ay;
    final double az;

    /** Where the last line entered this space and left it; enter is not below leave when it missed. */
    double enter;

    double leave;

    private double a;
    private double b;
    private double c;

    PocketSpace(Pocket pocket) {
        double azimuth = Math.toRadians(pocket.azimuthDeg());
        double tilt = Math.toRadians(pocket.tiltDeg());
        cosAzimuth = Math.cos(azimuth);
        sinAzimuth = Math.sin(azimuth);
        radius = pocket.diameterMm() / 2;
        ux = Math.sin(tilt) * cosAzimuth;
        uy = Math.sin(tilt) * sinAzimuth;
        uz = Math.cos(tilt);
        ax = Math.cos(tilt) * cosAzimuth;
        ay = Math.cos(tilt) * sinAzimuth;
        az = -Math.sin(tilt);
        fx = pocket.offsetMm() * cosAzimuth - pocket.depthMm() * ux;
        fy = pocket.offsetMm() * sinAzimuth - pocket.depthMm() * uy;
        fz = -pocket.depthMm() * uz;
    }

    /** Height of a point above the floor, along the axis. */
    double axial(double x, double y, double z) {
        return (x - fx) * ux + (y - fy) * uy + (z - fz) * uz;
    }

    /** Distance of a point from the axis. */
    double radial(double x, double y, double z) {
        double a = axial(x, y, z);
        double dx = x - fx - a * ux;
        double dy = y - fy - a * uy;
        double dz = z - fz - a * uz;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Squared distance of a point from the axis, less the squared radius. */
    double beside(double x, double y, double z) {
        double fromAxis = radial(x, y, z);
        return fromAxis * fromAxis - radius * radius;
    }

    boolean contains(double x, double y, double z) {
        return axial(x, y, z) > 0 && radial(x, y, z) < radius;
    }

    /** Distance from a point to this space; inside it, how far to its wall or floor, as a negative number. */
    double distance(double x, double y, double z) {
        double beside = radial(x, y, z) - radius;
        double below = -axial(x, y, z);
        return Math.hypot(Math.max(beside, 0), Math.max(below, 0)) + Math.min(Math.max(beside, below), 0);
    }

    /** Finds where the line from a point along a unit vector is in this space. */
    void cross(double x, double y, double z, double wx, double wy, double wz) {
        meet(x, y, z, wx, wy, wz);
        enter = Double.NEGATIVE_INFINITY;
        leave = Double.POSITIVE_INFINITY;
        double square = b * b - a * c;
        if (a < PARALLEL) {
            if (c >= 0) {
                leave = enter;
            }
        } else if (square <= 0) {
            leave = enter;
        } else {
            double root = Math.sqrt(square);
            enter = (-b - root) / a;
            leave = (-b + root) / a;
        }
        clipByFloor(axial(x, y, z), wx * ux + wy * uy + wz * uz);
    }

    /**
     * Above 0 when the line from a point along a unit vector cuts the wall, 0 when it touches it. A quadratic in the point, for
     * lines of one direction.
     */
    double cuts(double x, double y, double z, double wx, double wy, double wz) {
        meet(x, y, z, wx, wy, wz);
        return a < PARALLEL ? -c : b * b - a * c;
    }

    /** Sets a, b and c so that along the line the squared distance from the axis, less the squared radius, is a s^2 + 2 b s + c. */
    private void meet(double x, double y, double z, double wx, double wy, double wz) {
        double px = x - fx;
        double py = y - fy;
        double pz = z - fz;
        double high = px * ux + py * uy + pz * uz;
        double slope = wx * ux + wy * uy + wz * uz;
        a = 1 - slope * slope;
        b = px * wx + py * wy + pz * wz - high * slope;
        c = px * px + py * py + pz * pz - high * high - radius * radius;
    }

    private void clipByFloor(double high, double slope) {
        if (slope > 1e-14) {
            enter = Math.max(enter, -high / slope);
        } else if (slope < -1e-14) {
            leave = Math.min(leave, -high / slope);
        } else if (high <= 0) {
            leave = enter;
        }
    }
}
