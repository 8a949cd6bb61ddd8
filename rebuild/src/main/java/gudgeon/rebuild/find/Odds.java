package gudgeon.rebuild.find;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Builds the answers of a test from what each suspect makes likely. What is left over is shared by the answers not named; where all are
 * named it goes to each by its chance.
 */
final class Odds {
    private final Map<String, String> words = new LinkedHashMap<>();

    /** Adds an answer. */
    Odds answer(String id, String said) {
        words.put(id, said);
        return this;
    }

    /**
     * The answers.
     *
     * @param of the chances of some answers by their ids, for a suspect; an empty map where nothing is known of it
     */
    List<Answer> answers(List<TightSuspect> suspects, Function<TightSuspect, Map<String, Double>> of) {
        Map<String, Map<String, Double>> chances = new HashMap<>();
        words.keySet().forEach(answer -> chances.put(answer, new HashMap<>()));
        for (TightSuspect suspect : suspects) {
            Map<String, Double> named = of.apply(suspect);
            if (named.isEmpty()) {
                continue;
            }
            double sum =
                    named.values().stream().mapToDouble(Double::doubleValue).sum();
            int others = words.size() - named.size();
            chances.forEach((answer, by) -> by.put(
                    suspect.suspect().id(),
                    others == 0
                            ? named.getOrDefault(answer, 0.0) / sum
                            : named.getOrDefault(answer, (1 - sum) / others)));
        }
        List<Answer> answers = new ArrayList<>();
        words.forEach((id, said) -> answers.add(new Answer(id, said, chances.getOrDefault(id, Map.of()))));
        return answers;
    }
}
