package gudgeon.mechanics.clearance;

/**
 * The gap between a valve's edge and the bore's wall. The wall is the barrel as a body: it ends at the deck, so that an edge
 * still above the deck is measured to the bore's upper edge.
 */
final class GapToWall extends OverCycle {
    private static final int SAMPLES = HeadSolid.SAMPLES;
    private static final double STEP = 2 * Math.PI / SAMPLES;

    private final HeadSolid head = new HeadSolid();
    private final Around around = new Around();
    private Valve valve;
    private double boreRadius;
    private double lastLift;
    private double bestAngle;
    private double atX;
    private double atY;
    private double atZ;

    GapToWall(Valve valve) {
        this.valve = valve;
    }

    void set(Valve newValve, double gasketMm, double boreDiameterMm) {
        valve = newValve;
        boreRadius = boreDiameterMm / 2;
        head.set(newValve, gasketMm);
        lastLift = -1;
    }

    /** Least distance of the edge from the wall for any lift is bounded by how far out it can reach. */
    @Override
    double bound(double theta) {
        double lift = valve.lift().mmAt(theta);
        // every shut angle says the same: only the first of them is looked at
        if (lift == 0 && lastLift == 0) {
            return Double.POSITIVE_INFINITY;
        }
        lastLift = lift;
        head.place(lift, 0);
        double out =
                boreRadius - Math.hypot(head.cx, head.cy) - head.radius - head.margin * Math.hypot(head.ux, head.uy);
        return Math.max(out, head.lowest(lift));
    }

    @Override
    double rough(double theta) {
        head.place(valve.lift().mmAt(theta), 0);
        return sampleAll();
    }

    private double sampleAll() {
        double best = Double.POSITIVE_INFINITY;
        for (int rim = 0; rim < 2; rim++) {
            for (int i = 0; i < SAMPLES; i++) {
                head.rimSample(i, rim * head.margin);
                double here = ofRimPoint();
                if (here < best) {
                    best = here;
                    around.above = rim * head.margin;
                    bestAngle = i * STEP;
                }
            }
        }
        return best;
    }

    @Override
    double exact(double theta) {
        head.place(valve.lift().mmAt(theta), 0);
        return settle(sampleAll());
    }

    @Override
    double near(double theta) {
        head.place(valve.lift().mmAt(theta), 0);
        return settle(around.value(bestAngle));
    }

    /** Closes in on the least from the angle around the rim known best. */
    private double settle(double known) {
        double least = around.least(bestAngle - STEP, bestAngle + STEP, 1e-6);
        if (least <= known) {
            bestAngle = around.at;
        }
        double found = around.value(bestAngle);
        double r = Math.hypot(head.x, head.y);
        double scale = r > 0 ? boreRadius / r : 0;
        atX = head.x * scale;
        atY = head.y * scale;
        atZ = Math.min(head.z, 0);
        return found;
    }

    @Override
    Place place() {
        return new Place(atX, atY, atZ);
    }

    private double ofRimPoint() {
        double inward = boreRadius - Math.sqrt(head.x * head.x + head.y * head.y);
        if (inward < 0) {
            return head.z < 0 ? Math.max(inward, head.z) : head.z;
        }
        return head.z <= 0 ? inward : Math.sqrt(inward * inward + head.z * head.z);
    }

    private final class Around extends Minimiser {
        private double above;

        @Override
        double value(double angle) {
            head.rim(angle, above);
            return ofRimPoint();
        }
    }
}
