package gudgeon.mechanics.chamber;

import java.util.function.DoubleUnaryOperator;

/**
 * Volume that a crown's pockets removed, by integrating over each pocket's round floor the length of metal that stood above it.
 *
 * <p>Each pocket is looked at along its own axis, in polar coordinates about it, so that its wall is exactly the edge of the
 * integration. On every such line the metal that was there is one or two intervals; what pockets listed earlier had taken of it is
 * a set of intervals; the rest is this pocket's own. The sum over the pockets is the volume of their union. Where lines pass from
 * cutting another pocket's wall to missing it the length may jump, so every ray is integrated from one such place to the next.
 */
final class PocketVolume {
    /** Difference of the two rules of integration allowed for a panel of azimuth, mm3; the true error is mostly far below. */
    private static final double PANEL_TOLERANCE_MM3 = 0.01;

    private static final int PANELS = 12;
    private static final double PANEL = 2 * Math.PI / PANELS;
    /** The same for a piece of a ray, mm3 per radian. */
    private static final double RAY_TOLERANCE = PANEL_TOLERANCE_MM3 / PANEL / 8;

    private final BaseSolid base;
    private final PocketSpace[] spaces;
    /** What earlier pockets took of the line at hand, in order of start. */
    private final double[] takenFrom;

    private final double[] takenTo;
    private int taken;
    /** Where the ray at hand is to be split, in order. */
    private final double[] splits;

    private int splitCount;

    PocketVolume(Crown crown) {
        base = new BaseSolid(crown);
        spaces = crown.pockets().stream().map(Pocket::space).toArray(PocketSpace[]::new);
        takenFrom = new double[spaces.length];
        takenTo = new double[spaces.length];
        splits = new double[6 * spaces.length + 10];
    }

    /** Volume of metal removed by all pockets together, in mm3. */
    double removedMm3() {
        double sum = 0;
        for (int k = 0; k < spaces.length; k++) {
            for (int i = 0; i < PANELS; i++) {
                int own = k;
                sum += Quadrature.integrate(
                        phi -> alongRay(own, phi), i * PANEL, (i + 1) * PANEL, PANEL_TOLERANCE_MM3, 9);
            }
        }
        return sum;
    }

    /** What pocket k removed that no pocket before it had, along a ray from its axis, in mm3 per radian. */
    private double alongRay(int k, double phi) {
        PocketSpace p = spaces[k];
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double ex = cos * p.ax - sin * p.sinAzimuth;
        double ey = cos * p.ay + sin * p.cosAzimuth;
        double ez = cos * p.az;
        split(k, ex, ey, ez);
        double sum = 0;
        for (int i = 1; i < splitCount; i++) {
            sum += Quadrature.integrate(
                    rho -> rho * metalAbove(k, p.fx + rho * ex, p.fy + rho * ey, p.fz + rho * ez),
                    splits[i - 1],
                    splits[i],
                    RAY_TOLERANCE,
                    12);
        }
        return sum;
    }

    /**
     * Splits the ray where the lines on it begin to cut the land, the sphere or an earlier pocket, and where their ends, at the
     * floor and at the height of the highest metal, pass through a wall: walls that stand almost along the lines cross them
     * between these places, and would leave slivers thinner than the distance between the rule's points.
     */
    private void split(int k, double ex, double ey, double ez) {
        PocketSpace p = spaces[k];
        // the line that starts at the floor's lowest point is the longest
        double lowest = p.fz - p.radius * Math.abs(p.az);
        double top = Math.max((base.highest - lowest) / p.uz, 0);
        double tx = p.fx + top * p.ux;
        double ty = p.fy + top * p.uy;
        double tz = p.fz + top * p.uz;
        splitCount = 0;
        insertSplit(0);
        insertSplit(p.radius);
        splitAtRoots(rho -> base.cutsLand(p.fx + rho * ex, p.fy + rho * ey, p.ux, p.uy), p.radius);
        splitAtRoots(rho -> base.besideLand(p.fx + rho * ex, p.fy + rho * ey), p.radius);
        splitAtRoots(rho -> base.besideLand(tx + rho * ex, ty + rho * ey), p.radius);
        splitAtRoots(
                rho -> base.cutsSphere(p.fx + rho * ex, p.fy + rho * ey, p.fz + rho * ez, p.ux, p.uy, p.uz), p.radius);
        for (int j = 0; j < k; j++) {
            PocketSpace other = spaces[j];
            splitAtRoots(
                    rho -> other.cuts(p.fx + rho * ex, p.fy + rho * ey, p.fz + rho * ez, p.ux, p.uy, p.uz), p.radius);
            splitAtRoots(rho -> other.beside(p.fx + rho * ex, p.fy + rho * ey, p.fz + rho * ez), p.radius);
            splitAtRoots(rho -> other.beside(tx + rho * ex, ty + rho * ey, tz + rho * ez), p.radius);
        }
    }

    /** Splits the ray at the roots of a quadratic, known by its values at the start, in the middle and at the end. */
    private void splitAtRoots(DoubleUnaryOperator quadratic, double length) {
        double start = quadratic.applyAsDouble(0);
        double middle = quadratic.applyAsDouble(length / 2);
        double end = quadratic.applyAsDouble(length);
        double b = -3 * start + 4 * middle - end;
        double a = 2 * start - 4 * middle + 2 * end;
        double square = b * b - 4 * a * start;
        if (square <= 0) {
            return;
        }
        double q = -(b + Math.copySign(Math.sqrt(square), b)) / 2;
        insertSplitWithin(q / a, length);
        insertSplitWithin(start / q, length);
    }

    private void insertSplitWithin(double share, double length) {
        if (share > 1e-9 && share < 1 - 1e-9) {
            insertSplit(share * length);
        }
    }

    private void insertSplit(double at) {
        int i = splitCount++;
        while (i > 0 && splits[i - 1] > at) {
            splits[i] = splits[i - 1];
            i--;
        }
        splits[i] = at;
    }

    /** Length of metal that pocket k itself removed above a point of its floor, along its axis. */
    private double metalAbove(int k, double x, double y, double z) {
        PocketSpace p = spaces[k];
        base.cross(x, y, z, p.ux, p.uy, p.uz);
        if (!base.metalAbove(0)) {
            return 0;
        }
        taken = 0;
        for (int j = 0; j < k; j++) {
            spaces[j].cross(x, y, z, p.ux, p.uy, p.uz);
            insertTaken(spaces[j].enter, spaces[j].leave);
        }
        double length = 0;
        for (int i = 0; i < base.intervals; i++) {
            length += left(Math.max(base.from[i], 0), base.to[i]);
        }
        return length;
    }

    private void insertTaken(double from, double to) {
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
