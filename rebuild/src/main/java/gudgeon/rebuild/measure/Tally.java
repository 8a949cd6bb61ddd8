package gudgeon.rebuild.measure;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How the verdicts on a build stand.
 *
 * @param verdicts all of them
 */
public record Tally(List<Verdict> verdicts) {
    public Tally {
        verdicts = List.copyOf(verdicts);
    }

    /** How many come to an outcome. */
    public long of(Outcome outcome) {
        return verdicts.stream().filter(verdict -> verdict.outcome() == outcome).count();
    }

    /** Whether nothing that was measured is out of limits or unproven. */
    public boolean isClear() {
        return of(Outcome.OUT_OF_LIMITS) == 0 && of(Outcome.UNPROVEN) == 0;
    }

    /** The counts as a sentence. */
    public String sentence() {
        Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);
        verdicts.forEach(verdict -> counts.merge(verdict.outcome(), 1L, Long::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((outcome, count) -> words.add(count + " " + outcome.words()));
        return verdicts.isEmpty()
                ? "The book has no dimensions."
                : Amount.of(verdicts.size(), "dimension") + ": " + Sentence.list(words) + ".";
    }
}
