package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What Gudgeon works out for a check that is computed.
 *
 * @param clear whether all clears
 * @param sentences what came out, and what was taken from the book because nobody measured it
 */
public record Computed(boolean clear, List<String> sentences) {
    public Computed {
        sentences = List.copyOf(sentences);
    }

    /** What comes out for a check with the parts as measured; empty for one that is not computed. */
    public static Optional<Computed> of(Build build, Check check) {
        if (check.how() != Check.How.COMPUTED) {
            return Optional.empty();
        }
        return Optional.of(AsMeasured.of(build)
                .map(Computed::of)
                .orElseGet(() -> new Computed(
                        false,
                        List.of("Unproven: the engine book has no figures yet. Measure them and add them on the"
                                + " Engine page."))));
    }

    private static Computed of(AsMeasured measured) {
        try {
            TrialFit fit = TrialFit.withoutCures(measured.geometry(), measured.choice(), LengthUnit.MM);
            List<String> sentences = new ArrayList<>(List.of(fit.sentence()));
            sentences.addAll(measured.notes());
            return new Computed(fit.allClear(), sentences);
        } catch (UnknownChoice impossible) {
            return new Computed(false, impossible.sentences());
        }
    }
}
