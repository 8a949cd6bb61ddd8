package gudgeon.rebuild.find;

import gudgeon.mechanics.diagnose.Belief;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Buy;
import gudgeon.rebuild.plan.Undo;
import gudgeon.rebuild.sentence.Amount;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What each test is worth: what it is expected to tell for the work that it takes. */
final class Worth {
    /** What a part that is destroyed and has to be bought counts in minutes of work: an assumption of this program. */
    private static final int MINUTES_PER_PART = 20;

    private static final double MINUTES_PER_HOUR = 60;

    static final String ASSUMPTION =
            "Work of a test: its own minutes, and those of taking off, putting back and proving again"
                    + " what it needs off; each kind of part destroyed counts as " + MINUTES_PER_PART + " minutes more."
                    + " Common practice, no source.";

    private final Build build;
    private final List<Suspect> suspects;
    private final Belief belief;

    Worth(Build build, List<Suspect> suspects, Belief belief) {
        this.build = build;
        this.suspects = suspects;
        this.belief = belief;
    }

    List<NextTest> ofAll(List<Test> tests) {
        return tests.stream()
                .map(this::of)
                .sorted(Comparator.comparingDouble(NextTest::bitsPerHour).reversed())
                .toList();
    }

    private NextTest of(Test test) {
        double[][] answers = suspects.stream()
                .map(suspect -> test.answers().stream()
                        .mapToDouble(answer -> test.chance(answer, suspect))
                        .toArray())
                .toArray(double[][]::new);
        double bits = belief.expectedBits(answers);
        Optional<Undo> undo = test.opens().map(id -> Undo.of(build, id));
        int minutes = test.minutes()
                + undo.map(one -> one.minutesOff() + one.minutesBack()).orElse(0);
        List<Buy> buy = undo.map(Undo::buy).orElse(List.of());
        int counted = minutes + MINUTES_PER_PART * buy.size();
        double perHour = bits * MINUTES_PER_HOUR / counted;
        List<String> off =
                undo.map(Undo::off).orElse(List.of()).stream().map(Step::name).toList();
        String working = String.format(
                Locale.ROOT,
                "Expected to tell %.2f of the %.2f bits still open, for %s of work%s: %.2f bits an hour.",
                bits,
                belief.bits(),
                Amount.time(minutes),
                buy.isEmpty() ? "" : " and " + Amount.of(buy.size(), "kind") + " of part destroyed",
                perHour);
        return new NextTest(test, bits, minutes, buy, off, perHour, working);
    }
}
