package gudgeon.mechanics.chamber;

/**
 * Volume that a crown's pockets removed, by integrating over each pocket's round floor the length of metal that stood above it.
 *
 * <p>Each pocket is looked at along its own axis, in polar coordinates about it, so that its wall is exactly the edge of the
 * integration. On every such line the metal that was there is one or two intervals; what pockets listed earlier had taken of it is
 * a set of intervals; the rest is this pocket's own. The sum over the pockets is the volume of their union.
 */
final class PocketVolume {
    /** Difference of the two rules of integration allowed for each panel of azimuth, mm3; the true error is far below. */
    private static final double TOLERANCE_MM3 = 0.01;

    private static final int PANELS = 6;

    private final BaseSolid base;
    private final PocketSpace[] spaces;
    /** What earlier pockets took of the line at hand, in order of start. */
    private final double[] takenFrom;

    private final double[] takenTo;
    private int taken;

    PocketVolume(Crown crown) {
        base = new BaseSolid(crown);
        spaces = crown.pockets().stream().map(Pocket::space).toArray(PocketSpace[]::new);
        takenFrom = new double[spaces.length];
        takenTo = new double[spaces.length];
    }

    /** Volume of metal removed by all pockets together, in mm3. */
    double removedMm3() {
        double sum = 0;
        for (int k = 0; k < spaces.length; k++) {
            sum += ownMm3(k);
        }
        return sum;
    }

    /** What pocket k removed that no pocket before it had. */
    private double ownMm3(int k) {
        double panel = 2 * Math.PI / PANELS;
        double alongRay = TOLERANCE_MM3 / panel / 4;
        double sum = 0;
        for (int i = 0; i < PANELS; i++) {
            sum += Quadrature.integrate(
                    phi -> Quadrature.integrate(
                            rho -> rho * metalAbove(k, rho, Math.cos(phi), Math.sin(phi)),
                            0,
                            spaces[k].radius,
                            alongRay,
                            14),
                    i * panel,
                    (i + 1) * panel,
                    TOLERANCE_MM3,
                    9);
        }
        return sum;
    }

    /** Length of metal that pocket k itself removed above a point of its floor, along its axis. */
    private double metalAbove(int k, double rho, double cos, double sin) {
        PocketSpace p = spaces[k];
        double x = p.fx + rho * (cos * p.ax - sin * p.sinAzimuth);
        double y = p.fy + rho * (cos * p.ay + sin * p.cosAzimuth);
        double z = p.fz + rho * cos * p.az;
        base.cross(x, y, z, p.ux, p.uy, p.uz);
        if (!base.metalAbove(0)) {
            return 0;
        }
        taken = 0;
        for (int j = 0; j < k; j++) {
            spaces[j].cross(x, y, z, p.ux, p.uy, p.uz);
            insert(spaces[j].enter, spaces[j].leave);
        }
        double length = 0;
        for (int i = 0; i < base.intervals; i++) {
            length += left(Math.max(base.from[i], 0), base.to[i]);
        }
        return length;
    }

    private void insert(double from, double to) {
        if (to > from) {
            int i = taken++;
            while (i > 0 && takenFrom[i - 1] > from) {
                takenFrom[i] = takenFrom[i - 1];
                takenTo[i] = takenTo[i - 1];
                i--;
            }
            takenFrom[i] = from;
            takenTo[i] = to;
        }
    }

    /** Length of an interval that no earlier pocket took. */
    private double left(double from, double to) {
        double length = 0;
        double at = from;
        for (int i = 0; i < taken && at < to; i++) {
            length += Math.max(Math.min(takenFrom[i], to) - at, 0);
            at = Math.max(at, takenTo[i]);
        }
        return length + Math.max(to - at, 0);
    }
}
