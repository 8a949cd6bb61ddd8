package gudgeon.mechanics.clearance;

import java.util.ArrayList;
import java.util.List;

/**
 * The least values of all gaps for top ends that differ little from a known one: for budgets, where each size is moved by its
 * doubt. Use one per thread.
 */
public final class LeastGaps {
    private static final CrownGap[] TO_CROWN = CrownGap.values();

    private final int valves;
    private final List<Follower> followers = new ArrayList<>();
    private final CycleSearch search = new CycleSearch();

    /**
     * Follows the gaps of a top end.
     *
     * @param known the top end that the others differ little from
     * @param reachMm as for {@link Follower}
     */
    public LeastGaps(TopEnd known, double reachMm) {
        valves = known.valves().size();
        for (int v = 0; v < valves; v++) {
            for (CrownGap kind : TO_CROWN) {
                followers.add(new Follower(known, v, kind, reachMm));
            }
        }
    }

    /**
     * The least values in mm: for each valve bore, valve, nearest, side and wall gap, then each pair of valves, then the deck
     * gap. Infinite for a side gap that does not exist.
     *
     * @param drawn a top end with as many valves and pockets as the known one
     */
    public double[] of(TopEnd drawn) {
        int pairs = valves * (valves - 1) / 2;
        double[] least = new double[valves * (TO_CROWN.length + 1) + pairs + 1];
        int n = 0;
        for (int v = 0; v < valves; v++) {
            for (int k = 0; k < TO_CROWN.length; k++) {
                least[n++] = followers.get(v * TO_CROWN.length + k).leastMm(drawn);
            }
            GapToWall wall = new GapToWall(drawn.valves().get(v));
            wall.set(drawn.valves().get(v), drawn.gasketMm(), drawn.boreDiameterMm());
            least[n++] = search.least(wall);
        }
        for (int i = 0; i < valves; i++) {
            for (int j = i + 1; j < valves; j++) {
                least[n++] = search.least(Sweep.between(drawn, i, j));
            }
        }
        least[n] = drawn.gasketMm() - drawn.crank().protrusionMm();
        return least;
    }
}
