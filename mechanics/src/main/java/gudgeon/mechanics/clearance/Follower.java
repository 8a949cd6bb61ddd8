package gudgeon.mechanics.clearance;

import java.util.ArrayList;
import java.util.List;

/**
 * The least value of one gap for top ends that differ little from a known one, found by following the known one's low points:
 * some fifty times quicker than a sweep, for the many draws of a Monte Carlo propagation. Allocates nothing for a draw. Use one
 * per thread.
 */
public final class Follower {
    /** How far a low point may move over the crank angle between the known top end and a drawn one. */
    private static final double WINDOW_DEG = 8;

    private static final double ANGLE_TOLERANCE = 0.02;

    /** A point where the known gap is low: crank angle, candidate curve, and place on that curve. */
    private record Low(double thetaDeg, int curve, double at) {}

    private final CrownSolid crown = new CrownSolid();
    private final GapToCrown gap;
    private final int valve;
    private final Low[] lows;

    /**
     * A follower of one gap.
     *
     * @param known the top end whose low points are followed; drawn ones have as many valves and pockets
     * @param valve index of the valve
     * @param kind which gap
     * @param reachMm low points of the known top end are followed up to this much above the least; give some six standard
     *     uncertainties of the gap
     * @throws IndexOutOfBoundsException if there is no such valve
     */
    public Follower(TopEnd known, int valve, CrownGap kind, double reachMm) {
        this.valve = valve;
        CrownEdges edges = new CrownEdges(crown);
        crown.set(known.crown());
        edges.trace();
        gap = new GapToCrown(crown, edges, known.valves().get(valve), known.crank()).of(kind);
        gap.set(known.valves().get(valve), known.crank(), known.gasketMm());
        List<Low> found = new ArrayList<>();
        for (double theta : new CycleSearch().lowAngles(gap, reachMm)) {
            int points = gap.lowPoints(theta, reachMm);
            for (int i = 0; i < points; i++) {
                add(found, new Low(theta, gap.lowCurve[i], gap.lowAt[i]));
            }
        }
        lows = found.toArray(Low[]::new);
    }

    private static void add(List<Low> found, Low low) {
        boolean known = found.stream()
                .anyMatch(other -> other.curve == low.curve
                        && Math.abs(other.thetaDeg - low.thetaDeg) < WINDOW_DEG / 2
                        && Math.abs(Math.IEEEremainder(other.at - low.at, 1)) < 0.5 / HeadSolid.SAMPLES);
        if (!known) {
            found.add(low);
        }
    }

    /** The least value over the cycle in mm; positive infinity for a side gap where no edge comes down into a pocket. */
    public double leastMm(TopEnd drawn) {
        crown.set(drawn.crown());
        gap.set(drawn.valves().get(valve), drawn.crank(), drawn.gasketMm());
        gap.following = true;
        double best = Double.POSITIVE_INFINITY;
        for (Low low : lows) {
            gap.follow(low.curve, low.at);
            best = Math.min(best, gap.least(low.thetaDeg - WINDOW_DEG, low.thetaDeg + WINDOW_DEG, ANGLE_TOLERANCE));
        }
        return best;
    }
}
