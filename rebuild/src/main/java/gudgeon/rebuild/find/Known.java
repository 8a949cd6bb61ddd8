package gudgeon.rebuild.find;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What a build knows already of the suspects: which part was never seen going in, which check that clears one passed or failed. */
final class Known {
    static final String ASSUMPTION =
            "A part never taken down as fitted speaks for what needs it (80 to 10), a check that passed against what it clears (20"
                    + " to 90), one that failed for it (80 to 10): common practice, no source.";

    private static final double LIKELY = 0.8;
    private static final double UNLIKELY = 0.1;
    private static final double PASSES_ALL_THE_SAME = 0.2;
    private static final double PASSES = 0.9;

    private final Build build;
    private final List<Suspect> suspects;

    Known(Build build, List<Suspect> suspects) {
        this.build = build;
        this.suspects = suspects;
    }

    List<Evidence> evidence() {
        List<Evidence> all = new ArrayList<>();
        missing().ifPresent(all::add);
        for (Check check : build.structure().checks()) {
            if (suspects.stream().anyMatch(suspect -> clears(check, suspect))) {
                checked(check, all);
            }
        }
        return all;
    }

    /** Of an engine found in pieces a part that no entry has put in may still lie in its bag; all such parts are one witness. */
    private Optional<Evidence> missing() {
        List<String> out = suspects.stream()
                .flatMap(suspect -> suspect.reach().stream())
                .distinct()
                .filter(position -> !build.place(position).isFilled())
                .toList();
        if (out.isEmpty()) {
            return Optional.empty();
        }
        String names = Sentence.list(out.stream().map(build.structure()::name).toList());
        return Optional.of(new Evidence(
                out.stream()
                        .map(position -> build.place(position).fitted())
                        .filter(entry -> entry > 0)
                        .toList(),
                "Not all taken down as fitted: " + names + ".",
                logs(suspect -> suspect.reach().stream().anyMatch(out::contains) ? LIKELY : UNLIKELY)));
    }

    private void checked(Check check, List<Evidence> all) {
        CheckState state = build.check(check.id());
        if (state.status() == CheckState.Status.PASSED) {
            all.add(new Evidence(
                    List.of(state.at()),
                    "Passed: " + check.name() + ".",
                    logs(suspect -> clears(check, suspect) ? PASSES_ALL_THE_SAME : PASSES)));
        } else if (state.status() == CheckState.Status.FAILED) {
            all.add(new Evidence(
                    List.of(state.at()),
                    "Failed: " + check.name() + ".",
                    logs(suspect -> clears(check, suspect) ? LIKELY : UNLIKELY)));
        }
    }

    /** What was passed over knowingly, and would have told; sentences. A check that was not made speaks for nothing and against nothing. */
    List<String> waived() {
        return build.structure().checks().stream()
                .filter(check -> suspects.stream().anyMatch(suspect -> clears(check, suspect)))
                .filter(check -> build.check(check.id()).status() == CheckState.Status.WAIVED)
                .map(check -> "Not proved, since it was passed over in entry "
                        + build.check(check.id()).at() + ": " + check.name() + ".")
                .toList();
    }

    private static boolean clears(Check check, Suspect suspect) {
        return suspect.reach().stream().anyMatch(check.clears()::contains);
    }

    private Map<String, Double> logs(ToDoubleFunction<Suspect> chance) {
        Map<String, Double> logs = new HashMap<>();
        suspects.forEach(suspect -> logs.put(suspect.id(), Math.log(chance.applyAsDouble(suspect))));
        return logs;
    }
}
