package gudgeon.rebuild.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Checks that can't all have what they want: each wants to come before another, in a circle. Between such groups there is no
 * contest, so each can be put in order by itself.
 */
final class Rivals {
    private Rivals() {}

    /** The groups, each in the book's order, in an order in which no group costs a later one anything. */
    static List<List<Integer>> of(CheckRace race) {
        List<BitSet> reach = closure(race.wantedFirst());
        List<List<Integer>> groups = new ArrayList<>();
        BitSet placed = new BitSet();
        while (placed.cardinality() < race.size()) {
            for (int check = placed.nextClearBit(0); check < race.size(); check = placed.nextClearBit(check + 1)) {
                List<Integer> group = group(check, reach);
                if (leads(group, reach, placed)) {
                    groups.add(group);
                    group.forEach(placed::set);
                    break;
                }
            }
        }
        return groups;
    }

    /** Whom each check wants to come before, however far; Warshall's way. */
    private static List<BitSet> closure(List<BitSet> wanted) {
        for (int via = 0; via < wanted.size(); via++) {
            for (BitSet from : wanted) {
                if (from.get(via)) {
                    from.or(wanted.get(via));
                }
            }
        }
        return wanted;
    }

    private static List<Integer> group(int check, List<BitSet> reach) {
        List<Integer> group = new ArrayList<>();
        for (int other = 0; other < reach.size(); other++) {
            if (other == check
                    || (reach.get(check).get(other) && reach.get(other).get(check))) {
                group.add(other);
            }
        }
        return group;
    }

    /** Whether nobody outside a group who is not placed yet wants to come before it. */
    private static boolean leads(List<Integer> group, List<BitSet> reach, BitSet placed) {
        for (int other = placed.nextClearBit(0); other < reach.size(); other = placed.nextClearBit(other + 1)) {
            if (!group.contains(other) && reach.get(other).get(group.get(0))) {
                return false;
            }
        }
        return true;
    }
}
