package gudgeon.mechanics.clearance;

import gudgeon.mechanics.crank.Crank;
import java.util.Arrays;

/**
 * One of the gaps between a valve and the crown over the cycle. The exact least value lies on one of a few curves: the rims of
 * the valve's head against the crown's faces, the crown's edges against the head, or the point of a dome that faces it. Each is
 * sampled, then refined.
 */
final class GapToCrown extends OverCycle {
    private static final int RIM_SAMPLES = HeadSolid.SAMPLES;
    /** A rough look takes every so many-th sample. */
    private static final int COARSE = 2;

    private static final int TANGENT = 2;
    private static final int FIRST_EDGE = 3;
    /** Samples within this of each other, in mm, are one level stretch, which is looked at once. */
    private static final double LEVEL_MM = 1e-9;

    private static final double PARAMETER_TOLERANCE = 1e-6;

    private final CrownSolid crown;
    private final CrownEdges edges;
    private final HeadSolid head = new HeadSolid();
    private final AlongCurve along = new AlongCurve();
    private double[] sampled = {};
    private Valve valve;
    private Crank crank;
    private CrownGap kind = CrownGap.BORE;
    /** The pocket whose axis passes nearest to the head in this pose. */
    private int own;

    /** The low points found last. */
    int lows;

    int[] lowCurve = new int[16];
    double[] lowAt = new double[16];
    double[] lowValue = new double[16];
    private double planeZ;
    private int bestCurve;
    private double bestAt;
    // the place of the value found last, in the crown's frame
    private double atX;
    private double atY;
    private double atZ;

    GapToCrown(CrownSolid crown, CrownEdges edges, Valve valve, Crank crank) {
        this.crown = crown;
        this.edges = edges;
        this.valve = valve;
        this.crank = crank;
    }

    void set(Valve newValve, Crank newCrank, double gasketMm) {
        valve = newValve;
        crank = newCrank;
        head.set(newValve, gasketMm);
        int curves = FIRST_EDGE + edges.curves;
        if (sampled.length < curves * RIM_SAMPLES) {
            sampled = new double[curves * RIM_SAMPLES];
        }
    }

    GapToCrown of(CrownGap wanted) {
        kind = wanted;
        return this;
    }

    double lift(double theta) {
        return valve.lift().mmAt(theta);
    }

    @Override
    double bound(double theta) {
        double lowest = head.lowest(lift(theta)) - crank.crownHeightMm(theta) - crown.highest;
        if (kind != CrownGap.SIDE) {
            return lowest;
        }
        // a rim that is not below the highest metal is down in no pocket
        return lowest < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    private void pose(double theta) {
        planeZ = crank.crownHeightMm(theta);
        head.place(lift(theta), planeZ);
        if (kind == CrownGap.SIDE) {
            own = -1;
            double nearest = Double.POSITIVE_INFINITY;
            for (int k = 0; k < crown.pockets; k++) {
                double distance = crown.radial(k, head.cx, head.cy, head.cz);
                if (distance < nearest) {
                    nearest = distance;
                    own = k;
                }
            }
        }
    }

    @Override
    double rough(double theta) {
        pose(theta);
        // the other two jump where an edge passes another, and are looked at closely even here
        boolean smooth = kind == CrownGap.BORE || kind == CrownGap.NEAREST;
        return sampleAll(smooth ? COARSE : 1);
    }

    @Override
    double exact(double theta) {
        pose(theta);
        double best = sampleAll(1);
        lows = 0;
        refine(best, 0);
        double found = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lows; i++) {
            if (lowValue[i] < found) {
                found = lowValue[i];
                bestCurve = lowCurve[i];
                bestAt = lowAt[i];
            }
        }
        return settle();
    }

    @Override
    int lowPoints(double theta, double reach) {
        pose(theta);
        double best = sampleAll(1);
        lows = 0;
        refine(best, reach);
        dropAbove(reach);
        return lows;
    }

    /** Forgets the low points that turned out to lie beyond reach of the least. */
    private void dropAbove(double reach) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lows; i++) {
            least = Math.min(least, lowValue[i]);
        }
        int kept = 0;
        for (int i = 0; i < lows; i++) {
            if (lowValue[i] <= least + reach) {
                lowCurve[kept] = lowCurve[i];
                lowAt[kept] = lowAt[i];
                lowValue[kept++] = lowValue[i];
            }
        }
        lows = kept;
    }

    @Override
    void followLowPoint(int i) {
        follow(lowCurve[i], lowAt[i]);
    }

    /** Makes {@link #near} follow a low point. */
    void follow(int curve, double at) {
        bestCurve = curve;
        bestAt = at;
    }

    /** Refines each sampled low point that may hide a value within reach of the best sample. */
    private void refine(double best, double reach) {
        int roughCurve = bestCurve;
        int roughSample = (int) Math.round(bestAt * RIM_SAMPLES);
        for (int curve = 0; curve < FIRST_EDGE + edges.curves; curve++) {
            if (curve == TANGENT) {
                double here = tangent();
                if (here <= best + reach) {
                    keepLow(curve, 0, here);
                }
                continue;
            }
            double hidden =
                    curve < TANGENT ? 2 * Math.PI * head.radius / RIM_SAMPLES : edges.spacing[curve - FIRST_EDGE];
            int first = curve * RIM_SAMPLES;
            for (int i = 0; i < RIM_SAMPLES; i++) {
                double here = sampled[first + i];
                boolean low = here <= sampled[first + (i + 1) % RIM_SAMPLES]
                        && here < sampled[first + (i + RIM_SAMPLES - 1) % RIM_SAMPLES] - LEVEL_MM;
                boolean lowest = curve == roughCurve && i == roughSample;
                if (here < best + hidden + reach && (low || lowest)) {
                    double least = along.from(curve, (i - 1.0) / RIM_SAMPLES, (i + 1.0) / RIM_SAMPLES);
                    boolean sampleWins = here < least;
                    keepLow(curve, sampleWins ? i / (double) RIM_SAMPLES : along.at, Math.min(here, least));
                }
            }
        }
    }

    private void keepLow(int curve, double at, double least) {
        if (lows == lowCurve.length) {
            lowCurve = Arrays.copyOf(lowCurve, 2 * lows);
            lowAt = Arrays.copyOf(lowAt, 2 * lows);
            lowValue = Arrays.copyOf(lowValue, 2 * lows);
        }
        lowCurve[lows] = curve;
        lowAt[lows] = at;
        lowValue[lows++] = least;
    }

    @Override
    double near(double theta) {
        pose(theta);
        if (bestCurve != TANGENT) {
            double reach = 1.5 / RIM_SAMPLES;
            along.from(bestCurve, bestAt - reach, bestAt + reach);
            bestAt = along.at;
        }
        return settle();
    }

    /** Evaluates the best point once more, so that its place is kept. */
    private double settle() {
        return bestCurve == TANGENT ? tangent() : along.valueOn(bestCurve, bestAt);
    }

    @Override
    Place place() {
        return new Place(atX, atY, atZ + planeZ);
    }

    private double sampleAll(int stride) {
        double best = Double.POSITIVE_INFINITY;
        bestCurve = 0;
        bestAt = 0;
        for (int curve = 0; curve < FIRST_EDGE + edges.curves; curve++) {
            if (curve == TANGENT) {
                double here = tangent();
                if (here < best) {
                    best = here;
                    bestCurve = TANGENT;
                }
                continue;
            }
            boolean used = canBeLeast(curve);
            for (int i = 0; i < RIM_SAMPLES; i += stride) {
                double here = used ? sample(curve, i) : Double.POSITIVE_INFINITY;
                sampled[curve * RIM_SAMPLES + i] = here;
                if (here < best) {
                    best = here;
                    bestCurve = curve;
                    bestAt = i / (double) RIM_SAMPLES;
                }
            }
        }
        return best;
    }

    /** Whether the least can lie on a curve at all in this pose. */
    private boolean canBeLeast(int curve) {
        if (curve < TANGENT) {
            // along the stem the rim of the face always leads
            return kind != CrownGap.VALVE || curve == 0;
        }
        int edge = curve - FIRST_EDGE;
        return switch (kind) {
            case SIDE -> own >= 0 && edges.lipOf(edge) == own;
            case NEAREST -> true;
            case BORE, VALVE ->
                !edges.isLand(edge) || Math.hypot(head.cx, head.cy) + head.radius + head.margin > crown.landRadius;
        };
    }

    private double sample(int curve, int i) {
        if (curve < TANGENT) {
            head.rimSample(i, curve * head.margin);
            return ofRimPoint();
        }
        return edges.sample(curve - FIRST_EDGE, i) ? ofEdgePoint() : Double.POSITIVE_INFINITY;
    }

    /** The gap at the head's rim point that was set last. */
    private double ofRimPoint() {
        double x = head.x;
        double y = head.y;
        double z = head.z;
        return switch (kind) {
            case BORE -> {
                double fall = crown.travel(x, y, z, 0, 0, -1);
                keep(x, y, z - fall);
                yield fall;
            }
            case VALVE -> {
                double reach = crown.travel(x, y, z, -head.ux, -head.uy, -head.uz);
                keep(x - reach * head.ux, y - reach * head.uy, z - reach * head.uz);
                yield reach;
            }
            case NEAREST -> {
                double distance = crown.distanceToFaces(x, y, z);
                keep(crown.footX, crown.footY, crown.footZ);
                yield distance;
            }
            case SIDE -> own < 0 ? Double.POSITIVE_INFINITY : toOwnWall(x, y, z);
        };
    }

    private double toOwnWall(double x, double y, double z) {
        double a = crown.axial(own, x, y, z);
        double rho = crown.radial(own, x, y, z);
        if (a < 0 || rho < 1e-12) {
            return Double.POSITIVE_INFINITY;
        }
        double scale = crown.radius[own] / rho;
        double wallX = crown.fx[own] + a * crown.ux[own];
        double wallY = crown.fy[own] + a * crown.uy[own];
        double wallZ = crown.fz[own] + a * crown.uz[own];
        wallX += (x - wallX) * scale;
        wallY += (y - wallY) * scale;
        wallZ += (z - wallZ) * scale;
        if (!crown.inBase(wallX, wallY, wallZ) || crown.removed(own, wallX, wallY, wallZ)) {
            return Double.POSITIVE_INFINITY;
        }
        keep(wallX, wallY, wallZ);
        return crown.radius[own] - rho;
    }

    /** The gap at the crown's edge point that was set last. */
    private double ofEdgePoint() {
        double x = edges.x;
        double y = edges.y;
        double z = edges.z;
        keep(x, y, z);
        return switch (kind) {
            case BORE -> {
                double rise = head.lineFrom(x, y, z);
                boolean beneath = rise < Double.POSITIVE_INFINITY && head.leaves < 0 && edges.pz > 1e-9;
                yield beneath ? Double.POSITIVE_INFINITY : rise;
            }
            case VALVE -> {
                double a = head.axial(x, y, z);
                double out = edges.px * head.ux + edges.py * head.uy + edges.pz * head.uz;
                boolean passed = a > head.margin && out > 1e-9;
                boolean beside = head.radialSquared(x, y, z) > head.radius * head.radius;
                yield passed || beside ? Double.POSITIVE_INFINITY : -a;
            }
            case NEAREST -> head.distance(x, y, z);
            case SIDE -> {
                double a = head.axial(x, y, z);
                yield a < 0 || a > head.margin
                        ? Double.POSITIVE_INFINITY
                        : Math.sqrt(head.radialSquared(x, y, z)) - head.radius;
            }
        };
    }

    /** The gap at the point of the dome that faces the head. */
    private double tangent() {
        if (!crown.domed() || kind == CrownGap.SIDE) {
            return Double.POSITIVE_INFINITY;
        }
        double nx = head.ux;
        double ny = head.uy;
        double nz = head.uz;
        double distance = 0;
        if (kind == CrownGap.NEAREST) {
            head.nearest(0, 0, crown.sphereZ);
            double dz = head.z - crown.sphereZ;
            distance = Math.sqrt(head.x * head.x + head.y * head.y + dz * dz);
            nx = head.x / distance;
            ny = head.y / distance;
            nz = dz / distance;
        }
        double x = crown.sphereRadius * nx;
        double y = crown.sphereRadius * ny;
        double z = crown.sphereZ + crown.sphereRadius * nz;
        if (!(z >= 0) || crown.removed(-1, x, y, z)) {
            return Double.POSITIVE_INFINITY;
        }
        keep(x, y, z);
        return switch (kind) {
            case BORE -> head.lineFrom(x, y, z);
            case VALVE ->
                head.radialSquared(x, y, z) > head.radius * head.radius
                        ? Double.POSITIVE_INFINITY
                        : -head.axial(x, y, z);
            case NEAREST, SIDE -> distance - crown.sphereRadius;
        };
    }

    private void keep(double x, double y, double z) {
        atX = x;
        atY = y;
        atZ = z;
    }

    /** The gap along one candidate curve, by the curve's parameter from 0 to 1 around. */
    private final class AlongCurve extends Minimiser {
        private int curve;

        double from(int wanted, double low, double high) {
            curve = wanted;
            return least(low, high, PARAMETER_TOLERANCE);
        }

        double valueOn(int wanted, double s) {
            curve = wanted;
            return value(s);
        }

        @Override
        double value(double s) {
            if (curve < TANGENT) {
                head.rim(2 * Math.PI * s, curve * head.margin);
                return ofRimPoint();
            }
            return edges.at(curve - FIRST_EDGE, s) ? ofEdgePoint() : Double.POSITIVE_INFINITY;
        }
    }
}
