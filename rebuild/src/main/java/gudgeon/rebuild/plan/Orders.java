package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.InTurn;
import gudgeon.rebuild.book.Precedence;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Orders of the steps and checks that are left: the one of an order of checks, and the book's own. */
final class Orders {
    private final Structure structure;
    private final Precedence precedence;
    private final Burying burying;
    private final Set<String> left;
    private final List<String> steps;
    private final List<String> checks;
    private final Map<String, Integer> checkIndex = new HashMap<>();

    /**
     * @param left the steps and checks to be put in order
     */
    Orders(Structure structure, Set<String> left, Burying burying) {
        this.structure = structure;
        this.precedence = structure.precedence();
        this.burying = burying;
        this.left = left;
        this.steps =
                structure.steps().stream().map(Step::id).filter(left::contains).toList();
        this.checks = structure.checks().stream()
                .map(Check::id)
                .filter(left::contains)
                .toList();
        checks.forEach(check -> checkIndex.put(check, checkIndex.size()));
    }

    /** The race of the checks to be first. */
    CheckRace race() {
        CheckRace race = new CheckRace();
        Set<String> known = new LinkedHashSet<>(steps);
        for (String check : checks) {
            Set<String> before = precedence.allBefore(check);
            BitSet first = new BitSet();
            before.stream().filter(checkIndex::containsKey).forEach(id -> first.set(checkIndex.getOrDefault(id, 0)));
            Map<String, Double> costs = burying.costs(check);
            costs.keySet().retainAll(known);
            race.add(before.stream().filter(known::contains).toList(), first, costs);
        }
        return race;
    }

    /**
     * The order nearest to the book's in which no check pays more than in this order of checks: a step that a check does not pay for
     * there comes after it, and otherwise whatever is free and stands first in the book comes next, checks before steps.
     */
    List<String> with(List<Integer> checkOrder) {
        Map<String, Set<String>> before = new HashMap<>();
        Set<String> called = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>(steps);
        all.addAll(checks);
        all.forEach(id -> before.put(id, new LinkedHashSet<>(precedence.before(id))));
        for (int index : checkOrder) {
            String check = checks.get(index);
            called.addAll(precedence.allBefore(check));
            burying.costs(check).keySet().stream()
                    .filter(step -> !called.contains(step))
                    .forEach(step ->
                            before.getOrDefault(step, new LinkedHashSet<>()).add(check));
        }
        before.values().forEach(ids -> ids.retainAll(all));
        return InTurn.of(Stream.concat(checks.stream(), steps.stream()).toList(), before);
    }

    /** The book's own order: each step when its turn comes, before it what it cannot go without, the checks that are left last. */
    List<String> ofBook() {
        Set<String> order = new LinkedHashSet<>();
        steps.forEach(step -> add(step, order));
        checks.forEach(check -> add(check, order));
        return List.copyOf(order);
    }

    private void add(String id, Set<String> order) {
        if (!left.contains(id) || order.contains(id)) {
            return;
        }
        for (String first : precedence.before(id)) {
            boolean holds = structure
                    .check(first)
                    .map(check ->
                            check.holds().contains(id) || structure.check(id).isPresent())
                    .orElse(true);
            if (holds) {
                add(first, order);
            }
        }
        order.add(id);
    }
}
