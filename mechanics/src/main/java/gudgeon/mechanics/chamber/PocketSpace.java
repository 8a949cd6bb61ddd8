package gudgeon.mechanics.chamber;

/**
 * The space a pocket's cutter swept, in the crown's frame: a cylinder that begins at the floor and goes up along its axis without
 * end. Lengths in mm. Not for use by two threads at once: it keeps the last line it was asked about.
 */
final class PocketSpace {
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
        double px = x - fx;
        double py = y - fy;
        double pz = z - fz;
        double a0 = px * ux + py * uy + pz * uz;
        double slope = wx * ux + wy * uy + wz * uz;
        // squared distance from the axis along the line is a s^2 + 2 b s + c + radius^2
        double a = 1 - slope * slope;
        double b = px * wx + py * wy + pz * wz - a0 * slope;
        double c = px * px + py * py + pz * pz - a0 * a0 - radius * radius;
        enter = Double.NEGATIVE_INFINITY;
        leave = Double.POSITIVE_INFINITY;
        if (a < 1e-14) {
            if (c >= 0) {
                leave = enter;
            }
        } else {
            double square = b * b - a * c;
            double root = Math.sqrt(Math.max(square, 0));
            enter = square > 0 ? (-b - root) / a : leave;
            leave = (-b + root) / a;
        }
        clipByFloor(a0, slope);
    }

    private void clipByFloor(double a0, double slope) {
        if (slope > 1e-14) {
            enter = Math.max(enter, -a0 / slope);
        } else if (slope < -1e-14) {
            leave = Math.min(leave, -a0 / slope);
        } else if (a0 <= 0) {
            leave = enter;
        }
    }
}
