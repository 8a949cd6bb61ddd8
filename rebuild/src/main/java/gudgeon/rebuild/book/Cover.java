package gudgeon.rebuild.book;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** What covers what, followed outwards. */
public final class Cover {
    private Cover() {}

    /**
     * The steps that must come off before the positions can be reached, in the book's order.
     *
     * @param stands which steps stand, so that they cover
     */
    public static List<Step> of(Structure structure, Collection<String> positions, Predicate<Step> stands) {
        Set<String> reached = new HashSet<>(positions);
        Deque<String> open = new ArrayDeque<>(reached);
        Set<Step> off = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            for (Step step : structure.stepsCovering(open.pop())) {
                if (stands.test(step) && off.add(step)) {
                    step.fits().stream().filter(reached::add).forEach(open::push);
                }
            }
        }
        return structure.steps().stream().filter(off::contains).toList();
    }
}
