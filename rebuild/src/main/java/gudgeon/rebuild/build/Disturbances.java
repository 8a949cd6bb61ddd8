package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
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

    private final Map<String, Set<String>> doneOn = new HashMap<>();

    Disturbances(Structure structure) {
        for (Step step : structure.steps()) {
            if (step.fits().isEmpty()) {
                step.into()
                        .forEach(position -> doneOn.computeIfAbsent(position, id -> new LinkedHashSet<>())
                                .add(step.id()));
            }
        }
        for (Check check : structure.checks()) {
            check.with().forEach(position -> add(byTakingOff, position, check));
            for (String suspect : check.clears()) {
                add(byTakingOff, suspect, check);
                structure.positionsOf(suspect).forEach(position -> add(byTakingOff, position, check));
                if (check.disturbedByBlasting()) {
                    structure.positionsOf(suspect).forEach(position -> add(byBlasting, position, check));
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

    /** Steps that fit nothing and are done on the part of a position, as a setting: lost when it comes off. */
    Set<String> doneOn(String position) {
        return doneOn.getOrDefault(position, Set.of());
    }

    /** Checks that blasting the part of a position makes void. */
    Set<String> byBlasting(String position) {
        return byBlasting.getOrDefault(position, Set.of());
    }
}
