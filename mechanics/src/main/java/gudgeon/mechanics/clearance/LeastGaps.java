package gudgeon.mechanics.clearance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least values of all gaps for top ends that differ little from a known one: for budgets, where each size is moved by its
 * doubt. Only the gaps between what differs are worked out again. Use one per thread.
 */
public final class LeastGaps {
    private static final CrownGap[] TO_CROWN = CrownGap.values();

    private final TopEnd known;
    private final double[] leastOfKnown;
    private final List<Follower> followers = new ArrayList<>();
    private final CycleSearch search = new CycleSearch();

    /**
     * Follows the gaps of a top end.
     *
     * @param known the top end that the others differ little from
     * @param reachMm as for {@link Follower}
     */
    public LeastGaps(TopEnd known, double reachMm) {
        this.known = known;
        int valves = known.valves().size();
        for (int v = 0; v < valves; v++) {
            for (CrownGap kind : TO_CROWN) {
                followers.add(new Follower(known, v, kind, reachMm));
            }
        }
        leastOfKnown = new double[valves * (TO_CROWN.length + 1) + valves * (valves - 1) / 2 + 1];
        boolean[] all = new boolean[valves];
        Arrays.fill(all, true);
        work(known, leastOfKnown, true, true, all);
    }

    /**
     * The least values in mm: for each valve bore, valve, nearest, side and wall gap, then each pair of valves, then the deck
     * gap. Infinite for a side gap that does not exist.
     *
     * @param drawn a top end with as many valves and pockets as the known one
     */
    public double[] of(TopEnd drawn) {
        boolean barrel = drawn.gasketMm() != known.gasketMm() || drawn.boreDiameterMm() != known.boreDiameterMm();
        boolean piston = drawn.gasketMm() != known.gasketMm()
                || !drawn.crank().equals(known.crank())
                || !drawn.crown().equals(known.crown());
        boolean[] valve = new boolean[known.valves().size()];
        for (int v = 0; v < valve.length; v++) {
            valve[v] = !drawn.valves().get(v).equals(known.valves().get(v));
        }
        double[] least = leastOfKnown.clone();
        work(drawn, least, piston, barrel, valve);
        return least;
    }

    /** Works out those gaps again that lie between what has moved. */
    private void work(TopEnd drawn, double[] least, boolean piston, boolean barrel, boolean[] valve) {
        int n = 0;
        for (int v = 0; v < valve.length; v++) {
            for (int k = 0; k < TO_CROWN.length; k++, n++) {
                if (piston || valve[v]) {
                    least[n] = followers.get(v * TO_CROWN.length + k).leastMm(drawn);
                }
            }
            if (barrel || valve[v]) {
                least[n] = wall(drawn, v);
            }
            n++;
        }
        for (int i = 0; i < valve.length; i++) {
            for (int j = i + 1; j < valve.length; j++, n++) {
                if (valve[i] || valve[j]) {
                    least[n] = search.least(Sweep.between(drawn, i, j));
                }
            }
        }
        least[n] = drawn.gasketMm() - drawn.crank().protrusionMm();
    }

    private double wall(TopEnd drawn, int v) {
        GapToWall wall = new GapToWall(drawn.valves().get(v));
        wall.set(drawn.valves().get(v), drawn.gasketMm(), drawn.boreDiameterMm());
        return search.least(wall);
    }
}
