package gudgeon.mechanics.clearance;

/**
 * The head of a valve as a solid: a disc square to its stem, its flat face towards the piston. Lengths in mm, in whichever frame
 * the centre is given. Reused between poses.
 */
final class HeadSolid {
    /** Evenly spaced points on a rim. */
    static final int SAMPLES = 48;

    private static final double[] COS = new double[SAMPLES];
    private static final double[] SIN = new double[SAMPLES];

    static {
        for (int i = 0; i < SAMPLES; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / SAMPLES);
            SIN[i] = Math.sin(2 * Math.PI * i / SAMPLES);
        }
    }

    double radius;
    double margin;
    /** Unit vector of the stem, from the face up the stem. */
    double ux;

    double uy;
    double uz;
    /** Two unit vectors that span the face: along the azimuth, and square to it (which is level). */
    double ax;

    double ay;
    double az;
    double bx;
    double by;
    /** Centre of the face when shut, in the cylinder's frame. */
    double shutX;

    double shutY;
    double shutZ;
    /** Centre of the face. */
    double cx;

    double cy;
    double cz;
    /** The last rim point asked for. */
    double x;

    double y;
    double z;
    /** Where a line leaves the head, from the last {@link #lineFrom}. */
    double leaves;

    void set(Valve valve, double gasketMm) {
        double azimuth = Math.toRadians(valve.azimuthDeg());
        double tilt = Math.toRadians(valve.tiltDeg());
        double cos = Math.cos(azimuth);
        double sin = Math.sin(azimuth);
        radius = valve.headDiameterMm() / 2;
        margin = valve.marginMm();
        double tiltCos = Math.cos(tilt);
        ux = Math.sin(tilt) * cos;
        uy = Math.sin(tilt) * sin;
        uz = tiltCos;
        ax = tiltCos * cos;
        ay = tiltCos * sin;
        az = -Math.sin(tilt);
        bx = -sin;
        by = cos;
        shutX = valve.offsetMm() * cos;
        shutY = valve.offsetMm() * sin;
        shutZ = gasketMm + valve.recessMm();
    }

    /** Moves the head to a lift, seen from a plane at a height above the deck. */
    void place(double lift, double planeZ) {
        cx = shutX - lift * ux;
        cy = shutY - lift * uy;
        cz = shutZ - lift * uz - planeZ;
    }

    /** Height of the lowest point of the head at a lift, above the deck. */
    double lowest(double lift) {
        return shutZ - lift * uz - radius * Math.abs(az) + Math.min(0, margin * uz);
    }

    /** Sets {@link #x}, {@link #y}, {@link #z} to a point of the rim, at a height above the face along the stem. */
    void rim(double angle, double above) {
        rim(Math.cos(angle), Math.sin(angle), above);
    }

    /** The same for one of the evenly spaced points. */
    void rimSample(int i, double above) {
        rim(COS[i], SIN[i], above);
    }

    private void rim(double cos, double sin, double above) {
        double c = radius * cos;
        double s = radius * sin;
        x = cx + c * ax + s * bx + above * ux;
        y = cy + c * ay + s * by + above * uy;
        z = cz + c * az + above * uz;
    }

    /** Height of a point above the face, along the stem. */
    double axial(double px, double py, double pz) {
        return (px - cx) * ux + (py - cy) * uy + (pz - cz) * uz;
    }

    double radialSquared(double px, double py, double pz) {
        double a = axial(px, py, pz);
        double dx = px - cx - a * ux;
        double dy = py - cy - a * uy;
        double dz = pz - cz - a * uz;
        return dx * dx + dy * dy + dz * dz;
    }

    /** Distance of a point from the head, negative inside it. */
    double distance(double px, double py, double pz) {
        double a = axial(px, py, pz);
        double dx = px - cx - a * ux;
        double dy = py - cy - a * uy;
        double dz = pz - cz - a * uz;
        double dr = Math.sqrt(dx * dx + dy * dy + dz * dz) - radius;
        double da = Math.max(-a, a - margin);
        if (dr <= 0) {
            return da <= 0 ? Math.max(dr, da) : da;
        }
        return da <= 0 ? dr : Math.sqrt(dr * dr + da * da);
    }

    /** Sets {@link #x}, {@link #y}, {@link #z} to the head's point nearest to a point outside it. */
    void nearest(double px, double py, double pz) {
        double a = axial(px, py, pz);
        double dx = px - cx - a * ux;
        double dy = py - cy - a * uy;
        double dz = pz - cz - a * uz;
        double rho = Math.sqrt(dx * dx + dy * dy + dz * dz);
        double scale = rho > radius ? radius / rho : 1;
        double up = Math.min(Math.max(a, 0), margin);
        x = cx + dx * scale + up * ux;
        y = cy + dy * scale + up * uy;
        z = cz + dz * scale + up * uz;
    }

    /**
     * How far a point must travel straight up before it meets the head; negative when the head began below it. Positive infinity
     * when it never does. Sets {@link #leaves}.
     */
    double lineFrom(double px, double py, double pz) {
        double a = axial(px, py, pz);
        double qx = px - cx - a * ux;
        double qy = py - cy - a * uy;
        double qz = pz - cz - a * uz;
        double start = -a / uz;
        double end = (margin - a) / uz;
        double dx = -uz * ux;
        double dy = -uz * uy;
        double dz = 1 - uz * uz;
        double qa = dx * dx + dy * dy + dz * dz;
        double qc = qx * qx + qy * qy + qz * qz - radius * radius;
        if (qa < 1e-14) {
            if (qc > 0) {
                return Double.POSITIVE_INFINITY;
            }
        } else {
            double qb = qx * dx + qy * dy + qz * dz;
            double d = qb * qb - qa * qc;
            if (d < 0) {
                return Double.POSITIVE_INFINITY;
            }
            double root = Math.sqrt(d);
            start = Math.max(start, (-qb - root) / qa);
            end = Math.min(end, (-qb + root) / qa);
        }
        leaves = end;
        return start <= end ? start : Double.POSITIVE_INFINITY;
    }
}
