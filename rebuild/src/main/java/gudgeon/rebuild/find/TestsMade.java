package gudgeon.rebuild.find;

import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Finding.Tried;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The tests of a catalogue that were made, as evidence. The same answer told twice is one: making a test again is no new witness,
 * since what misled it once misleads it again. Two different answers of one test both count.
 */
final class TestsMade {
    private record Outcome(Test test, Answer answer) {}

    private final List<Test> catalogue;
    private final Map<Outcome, List<Long>> made = new LinkedHashMap<>();
    private final List<String> unknown = new ArrayList<>();

    TestsMade(List<Test> catalogue, List<Told<Tried>> tried) {
        this.catalogue = List.copyOf(catalogue);
        tried.forEach(this::add);
    }

    private void add(Told<Tried> told) {
        Optional<Test> test = catalogue.stream()
                .filter(one -> one.id().equals(told.fact().test()))
                .findFirst();
        Optional<Answer> answer = test.flatMap(one -> one.answer(told.fact().answer()));
        if (answer.isPresent()) {
            made.computeIfAbsent(new Outcome(test.orElseThrow(), answer.get()), outcome -> new ArrayList<>())
                    .add(told.number());
        } else {
            unknown.add("Entry " + told.number() + " tells of the test '"
                    + told.fact().test() + "' with the answer '" + told.fact().answer()
                    + "', which is not among those known here, so it does not count.");
        }
    }

    List<Evidence> evidence(List<Suspect> suspects) {
        List<Evidence> all = new ArrayList<>();
        made.forEach((outcome, entries) -> {
            Map<String, Double> logs = new HashMap<>();
            suspects.forEach(suspect ->
                    logs.put(suspect.id(), Math.log(outcome.test().chance(outcome.answer(), suspect))));
            all.add(new Evidence(
                    entries,
                    Sentence.capital(outcome.test().name()) + ": "
                            + outcome.answer().words() + ".",
                    logs));
        });
        return all;
    }

    /** How well a suspect explains what came of the tests, each a sentence. */
    List<String> explains(Suspect suspect) {
        return made.keySet().stream()
                .map(outcome -> String.format(
                        Locale.ROOT,
                        "%s: %s; that comes in %.0f of 100 cases with it.",
                        Sentence.capital(outcome.test().name()),
                        outcome.answer().words(),
                        100 * outcome.test().chance(outcome.answer(), suspect)))
                .toList();
    }

    /** The tests not made yet. */
    List<Test> left() {
        return catalogue.stream()
                .filter(test -> made.keySet().stream()
                        .noneMatch(outcome -> outcome.test().equals(test)))
                .toList();
    }

    /** Tests told that the catalogue does not have; sentences. */
    List<String> unknown() {
        return List.copyOf(unknown);
    }
}
