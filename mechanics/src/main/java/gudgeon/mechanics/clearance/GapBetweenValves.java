package gudgeon.mechanics.clearance;

/**
 * The gap between the heads of two valves. The nearest points of two discs lie on a rim of one of them, or on both sides where
 * their axes' common perpendicular passes.
 */
final class GapBetweenValves extends OverCycle {
    private static final int SAMPLES = HeadSolid.SAMPLES;

    /**
     * Circles looked at on each head: both rims, and half-way between them, where heads of one height that stand in each other
     * are deepest.
     */
    private static final int CIRCLES = 3;

    /** A rough look takes every so many-th sample. */
    private static final int COARSE = 3;

    private final HeadSolid first = new HeadSolid();
    private final HeadSolid second = new HeadSolid();
    private final Around around = new Around();
    private final double[] sampled = new double[2 * CIRCLES * SAMPLES];
    private Valve firstValve;
    private Valve secondValve;
    private boolean shutSeen;
    private int bestRim;
    private double bestAt;
    private double atX;
    private double atY;
    private double atZ;

    GapBetweenValves(Valve first, Valve second) {
        firstValve = first;
        secondValve = second;
    }

    void set(Valve newFirst, Valve newSecond, double gasketMm) {
        firstValve = newFirst;
        secondValve = newSecond;
        first.set(newFirst, gasketMm);
        second.set(newSecond, gasketMm);
        shutSeen = false;
    }

    @Override
    double bound(double theta) {
        double one = firstValve.lift().mmAt(theta);
        double two = secondValve.lift().mmAt(theta);
        if (one == 0 && two == 0) {
            if (shutSeen) {
                return Double.POSITIVE_INFINITY;
            }
            shutSeen = true;
        }
        first.place(one, 0);
        second.place(two, 0);
        double dx = first.cx - second.cx;
        double dy = first.cy - second.cy;
        double dz = first.cz - second.cz;
        return Math.sqrt(dx * dx + dy * dy + dz * dz)
                - Math.hypot(first.radius, first.margin)
                - Math.hypot(second.radius, second.margin);
    }

    private void pose(double theta) {
        first.place(firstValve.lift().mmAt(theta), 0);
        second.place(secondValve.lift().mmAt(theta), 0);
    }

    @Override
    double rough(double theta) {
        pose(theta);
        return sampleAll(COARSE);
    }

    private double sampleAll(int stride) {
        double best = Double.POSITIVE_INFINITY;
        for (int rim = 0; rim < 2 * CIRCLES; rim++) {
            around.rim = rim;
            for (int i = 0; i < SAMPLES; i += stride) {
                double here = around.sample(i);
                sampled[rim * SAMPLES + i] = here;
                best = Math.min(best, here);
            }
        }
        return best;
    }

    @Override
    double exact(double theta) {
        pose(theta);
        double best = sampleAll(1);
        double step = 2 * Math.PI / SAMPLES;
        double found = Double.POSITIVE_INFINITY;
        for (int rim = 0; rim < 2 * CIRCLES; rim++) {
            double hidden = step * Math.max(first.radius, second.radius);
            for (int i = 0; i < SAMPLES; i++) {
                double here = sampled[rim * SAMPLES + i];
                if (here < best + hidden
                        && here <= sampled[rim * SAMPLES + (i + 1) % SAMPLES]
                        && here <= sampled[rim * SAMPLES + (i + SAMPLES - 1) % SAMPLES]) {
                    around.rim = rim;
                    double least = around.least((i - 1) * step, (i + 1) * step, 1e-6);
                    if (least < found) {
                        found = least;
                        bestRim = rim;
                        bestAt = around.at;
                    }
                }
            }
        }
        return settle(found);
    }

    @Override
    double near(double theta) {
        pose(theta);
        around.rim = bestRim;
        double reach = 3 * Math.PI / SAMPLES;
        double found = around.least(bestAt - reach, bestAt + reach, 1e-6);
        bestAt = around.at;
        return settle(found);
    }

    private double settle(double found) {
        around.rim = bestRim;
        around.value(bestAt);
        HeadSolid moving = bestRim < CIRCLES ? first : second;
        atX = moving.x;
        atY = moving.y;
        atZ = moving.z;
        return Math.min(found, sideToSide());
    }

    /** Distance of the two cylinders' sides along their axes' common perpendicular, where that meets both sides. */
    private double sideToSide() {
        double nx = first.uy * second.uz - first.uz * second.uy;
        double ny = first.uz * second.ux - first.ux * second.uz;
        double nz = first.ux * second.uy - first.uy * second.ux;
        double n2 = nx * nx + ny * ny + nz * nz;
        if (n2 < 1e-12) {
            return Double.POSITIVE_INFINITY;
        }
        double wx = second.cx - first.cx;
        double wy = second.cy - first.cy;
        double wz = second.cz - first.cz;
        double dot = first.ux * second.ux + first.uy * second.uy + first.uz * second.uz;
        double d1 = wx * first.ux + wy * first.uy + wz * first.uz;
        double d2 = wx * second.ux + wy * second.uy + wz * second.uz;
        double up1 = (d1 - d2 * dot) / n2;
        double up2 = (d1 * dot - d2) / n2;
        if (up1 < 0 || up1 > first.margin || up2 < 0 || up2 > second.margin) {
            return Double.POSITIVE_INFINITY;
        }
        double apart = Math.abs(wx * nx + wy * ny + wz * nz) / Math.sqrt(n2) - first.radius - second.radius;
        return apart >= 0 ? apart : Double.POSITIVE_INFINITY;
    }

    @Override
    Place place() {
        return new Place(atX, atY, atZ);
    }

    /** Distance of a point on one of the circles to the other head, by its angle around the rim. */
    private final class Around extends Minimiser {
        private int rim;

        @Override
        double value(double angle) {
            HeadSolid moving = rim < CIRCLES ? first : second;
            moving.rim(angle, height(moving));
            return toOther(moving);
        }

        double sample(int i) {
            HeadSolid moving = rim < CIRCLES ? first : second;
            moving.rimSample(i, height(moving));
            return toOther(moving);
        }

        private double height(HeadSolid moving) {
            return rim % CIRCLES * moving.margin / (CIRCLES - 1);
        }

        private double toOther(HeadSolid moving) {
            return (moving == first ? second : first).distance(moving.x, moving.y, moving.z);
        }
    }
}
