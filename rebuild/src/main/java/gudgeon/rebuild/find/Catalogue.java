package gudgeon.rebuild.find;

import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the trade knows of a trouble: its causes, and the tests that tell them apart.
 *
 * @param causes two or more
 * @param trials one or more
 */
record Catalogue(List<Cause> causes, List<Trial> trials) {
    Catalogue {
        causes = List.copyOf(causes);
        trials = List.copyOf(trials);
    }

    List<Suspect> suspects(Build build) {
        Reach reach = new Reach(build);
        return causes.stream().map(cause -> cause.in(reach)).toList();
    }

    /** The case of a search of which nothing was read by an instrument. */
    Case asCase(Build build, Hunt hunt) {
        return asCase(build, hunt, List.of(), Set.of(), List.of());
    }

    /**
     * The case of a search: what the build knows, what was read, and what was tried.
     *
     * @param build the build as it was when the search ended, or as it is
     * @param read what was read
     * @param told ids of tests whose answer is in what was read, so that it does not count twice
     * @param grounds what was taken for granted of what was read; sentences
     */
    Case asCase(Build build, Hunt hunt, List<Evidence> read, Set<String> told, List<String> grounds) {
        Reach reach = new Reach(build);
        List<Suspect> suspects = suspects(build);
        List<Test> tests = trials.stream().map(trial -> trial.in(reach, causes)).toList();
        Known known = new Known(build, suspects);
        TestsMade made = new TestsMade(
                tests,
                hunt.tried().stream()
                        .filter(tried -> !told.contains(tried.fact().test()))
                        .toList());
        List<Evidence> evidence = new ArrayList<>(known.evidence());
        evidence.addAll(read);
        evidence.addAll(made.evidence(suspects));
        Map<String, List<String>> explains = new HashMap<>();
        suspects.forEach(suspect -> explains.put(suspect.id(), made.explains(suspect)));
        List<String> assumptions = new ArrayList<>(grounds);
        assumptions.add(Known.ASSUMPTION);
        assumptions.add(Trial.ASSUMPTION);
        assumptions.addAll(known.waived());
        assumptions.addAll(made.unknown());
        List<Test> left =
                made.left().stream().filter(test -> !told.contains(test.id())).toList();
        return new Case(suspects, evidence, left, explains, assumptions);
    }
}
