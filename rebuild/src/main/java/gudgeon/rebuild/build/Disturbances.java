package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Structure;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Which checks become void by what; worked out once for a book. */
final class Disturbances {
    private final Map<String, Set<String>> byTakingOff = new HashMap<>();
    private final Map<String, Set<String>> byDoing = new HashMap<>();
    private final Map<String, Set<String>> byBlasting = new HashMap<>();

    Disturbances(Structure structure) {
        for (Check check : structure.checks()) {
            check.with().forEach(position -> add(byTakingOff, position, check));
            check.clears().forEach(suspect -> add(byTakingOff, suspect, check));
            for (String position : structure.cleared(check)) {
                add(byTakingOff, position, check);
                if (check.disturbedByBlasting()) {
                    add(byBlasting, position, check);
                }
            }
            for (String disturber : check.disturbedBy()) {
                add(byTakingOff, disturber, check);
                add(byDoing, disturber, check);
            }
        }
    }

    private static void add(Map<String, Set<String>> to, String by, Check check) {
        to.computeIfAbsent(by, id -> new LinkedHashSet<>()).add(check.id());
    }

    /** Checks that taking off a position, or undoing a step, makes void. */
    Set<String> byTakingOff(String id) {
        return byTakingOff.getOrDefault(id, Set.of());
    }

    /** Checks that doing a step, or fitting a position, makes void. */
    Set<String> byDoing(String id) {
        return byDoing.getOrDefault(id, Set.of());
    }

    /** Checks that blasting the part of a position makes void. */
    Set<String> byBlasting(String position) {
        return byBlasting.getOrDefault(position, Set.of());
    }
}
