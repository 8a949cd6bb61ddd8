package gudgeon.rebuild.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/** Puts in order what waits for one another: of all that waits for nothing more, what ranks first comes next (Kahn's way). */
public final class InTurn {
    private InTurn() {}

    /**
     * The order.
     *
     * @param ranked all that is to be put in order, what ranks first in front
     * @param before what each waits for, itself among {@code ranked}; nothing where it is not named
     * @return all of it but what stands in a cycle, or behind one
     */
    public static List<String> of(List<String> ranked, Map<String, Set<String>> before) {
        Map<String, List<Integer>> after = new HashMap<>();
        int[] waiting = new int[ranked.size()];
        PriorityQueue<Integer> open = new PriorityQueue<>();
        for (int i = 0; i < ranked.size(); i++) {
            Set<String> firsts = before.getOrDefault(ranked.get(i), Set.of());
            waiting[i] = firsts.size();
            for (String first : firsts) {
                after.computeIfAbsent(first, f -> new ArrayList<>()).add(i);
            }
            if (firsts.isEmpty()) {
                open.add(i);
            }
        }
        List<String> order = new ArrayList<>();
        while (!open.isEmpty()) {
            String next = ranked.get(open.remove());
            order.add(next);
            for (int then : after.getOrDefault(next, List.of())) {
                waiting[then]--;
                if (waiting[then] == 0) {
                    open.add(then);
                }
            }
        }
        return order;
    }
}
