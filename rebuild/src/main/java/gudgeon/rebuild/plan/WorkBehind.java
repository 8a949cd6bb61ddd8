package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Precedence;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The work that waits behind each step and check, however far. */
final class WorkBehind {
    private final List<String> order;
    private final Map<String, BitSet> behind = new HashMap<>();
    private final Structure structure;

    /**
     * @param left the steps and checks that are left to do
     */
    WorkBehind(Structure structure, List<String> order, Set<String> left) {
        this.structure = structure;
        this.order = order;
        Precedence precedence = structure.precedence();
        Map<String, Integer> at = new HashMap<>();
        for (int i = order.size() - 1; i >= 0; i--) {
            at.put(order.get(i), i);
            BitSet reached = new BitSet(order.size());
            for (String next : precedence.after(order.get(i))) {
                reached.or(behind.getOrDefault(next, new BitSet()));
                if (left.contains(next)) {
                    reached.set(at.getOrDefault(next, i));
                }
            }
            behind.put(order.get(i), reached);
        }
    }

    /** The steps and checks behind one, in their order. */
    List<String> of(String id) {
        return behind.getOrDefault(id, new BitSet()).stream()
                .mapToObj(order::get)
                .toList();
    }

    /** Likely time of work behind it, in minutes. */
    int minutes(String id) {
        return of(id).stream().mapToInt(node -> minutesOf(structure, node)).sum();
    }

    /** Likely time of work of a step or check, in minutes. */
    static int minutesOf(Structure structure, String id) {
        return structure
                .step(id)
                .map(Step::minutes)
                .or(() -> structure.check(id).map(Check::minutes))
                .orElse(0);
    }
}
