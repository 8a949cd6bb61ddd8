package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where one order does better than another, check by check. */
final class Gains {
    private final Structure structure;
    private final Burying burying;

    private record Gain(double expected, String sentence) {}

    Gains(Structure structure, Burying burying) {
        this.structure = structure;
        this.burying = burying;
    }

    /** Sentences, the most worth first: one for each check that finds less done over its suspects. */
    List<String> of(List<String> better, List<String> worse) {
        Map<String, Integer> now = places(better);
        Map<String, Integer> before = places(worse);
        List<Gain> gains = new ArrayList<>();
        structure.checks().forEach(check -> gains.addAll(of(check.id(), now, before)));
        gains.sort(Comparator.comparingDouble(Gain::expected).reversed());
        return gains.stream().map(Gain::sentence).toList();
    }

    private static Map<String, Integer> places(List<String> order) {
        Map<String, Integer> places = new HashMap<>();
        order.forEach(id -> places.put(id, places.size()));
        return places;
    }

    /** The gain of a check for the suspect of which it saves most steps; none if it saves nothing. */
    private List<Gain> of(String check, Map<String, Integer> now, Map<String, Integer> before) {
        if (!now.containsKey(check)) {
            return List.of();
        }
        double expected = 0;
        List<Step> most = List.of();
        String suspect = "";
        for (Burying.Suspect one : burying.suspects(check)) {
            List<Step> saved = one.covering().stream()
                    .filter(step -> isBefore(step, check, before) && !isBefore(step, check, now))
                    .sorted(Comparator.comparingInt(step -> now.getOrDefault(step.id(), 0)))
                    .toList();
            expected += one.chance() * minutes(saved);
            if (saved.size() > most.size()) {
                most = saved;
                suspect = one.position();
            }
        }
        return most.isEmpty()
                ? List.of()
                : List.of(new Gain(
                        expected,
                        "'" + structure.name(check) + "' before '" + most.get(0).name() + "' saves "
                                + Amount.of(most.size(), "step") + " undone and done again, about "
                                + Amount.time(Math.round(minutes(most))) + ", if something is wrong with the "
                                + structure.name(suspect) + "."));
    }

    private static double minutes(List<Step> steps) {
        return steps.stream().mapToDouble(Burying::offAndOn).sum();
    }

    private static boolean isBefore(Step step, String check, Map<String, Integer> places) {
        Integer at = places.get(step.id());
        return at != null && at < places.getOrDefault(check, 0);
    }
}
