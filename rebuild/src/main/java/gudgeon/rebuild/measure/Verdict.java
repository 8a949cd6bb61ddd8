package gudgeon.rebuild.measure;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.Figure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a part's size is in its limits, as far as its readings prove it. The worst place decides, and a place that was not read
 * may be worse: so nothing is proved in limits before all were read. A pure function of the build.
 *
 * @param evaluated what the readings come to
 * @param outcome what can be said
 * @param worst the figure that decides; empty where nothing was measured
 * @param chances how likely it lies below, within and above the limits; empty where there are none, nothing was measured or it is
 *     not known what it was measured with
 * @param condition how it stands to a new part
 */
public record Verdict(
        Evaluated evaluated,
        Outcome outcome,
        Optional<Figure> worst,
        Optional<Conformity> chances,
        Condition condition) {
    private static final ToleranceInterval ANYTHING =
            new ToleranceInterval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** The verdict on the part that counts for the dimension's position. */
    public static Verdict of(Build build, Dimension dimension) {
        return of(Evaluated.of(build, dimension));
    }

    /**
     * The verdict on one part.
     *
     * @param part the part entered for the dimension's position; empty for the one that came off
     */
    public static Verdict of(Build build, Dimension dimension, String part) {
        return of(Evaluated.of(build, dimension, part));
    }

    /** The verdicts on all dimensions of the book, each on the part that counts, in the book's order. */
    public static List<Verdict> all(Build build) {
        return build.structure().dimensions().stream()
                .map(dimension -> of(build, dimension))
                .toList();
    }

    /** The verdict on what was evaluated. */
    public static Verdict of(Evaluated evaluated) {
        Optional<Expect> limits = evaluated.dimension().expect();
        if (evaluated.isEmpty()) {
            return new Verdict(evaluated, Outcome.NOT_MEASURED, Optional.empty(), Optional.empty(), Condition.NOT_SAID);
        }
        Condition condition = condition(evaluated);
        if (limits.isEmpty()) {
            Figure worst = worst(
                    evaluated.figures(),
                    evaluated.dimension().standard().map(Verdict::interval).orElse(ANYTHING));
            return new Verdict(evaluated, Outcome.NO_LIMITS, Optional.of(worst), Optional.empty(), condition);
        }
        return limited(evaluated, limits.get(), condition);
    }

    /** A place of which nobody said what it was read with proves nothing, but does not undo what another proves to be out. */
    private static Verdict limited(Evaluated evaluated, Expect limits, Condition condition) {
        List<Figure> known =
                evaluated.figures().stream().filter(Figure::doubtKnown).toList();
        Optional<Figure> unknown = evaluated.figures().stream()
                .filter(figure -> !figure.doubtKnown())
                .findFirst();
        ToleranceInterval interval = interval(evaluated.dimension(), limits, known);
        Optional<Figure> worst = known.isEmpty() ? Optional.empty() : Optional.of(worst(known, interval));
        Optional<Conformity> chances = worst.map(figure -> Conformity.of(figure.quantity(), interval));
        if (unknown.isPresent() && chances.filter(one -> one.zone() == Zone.OUT).isEmpty()) {
            return new Verdict(evaluated, Outcome.UNPROVEN, unknown, Optional.empty(), condition);
        }
        return new Verdict(evaluated, outcome(chances.orElseThrow(), evaluated), worst, chances, condition);
    }

    private static Outcome outcome(Conformity chances, Evaluated evaluated) {
        return switch (chances.zone()) {
            case OUT -> Outcome.OUT_OF_LIMITS;
            case UNPROVEN -> Outcome.UNPROVEN;
            case IN -> evaluated.missing() > 0 ? Outcome.UNPROVEN : Outcome.IN_LIMITS;
        };
    }

    /** The dimension. */
    public Dimension dimension() {
        return evaluated.dimension();
    }

    /** Name of the part; empty for the one that came off. */
    public String part() {
        return evaluated.part();
    }

    /** Whether all that was read is proved in limits, and only places that were not read keep the verdict open. */
    public boolean waitsForPlaces() {
        return outcome == Outcome.UNPROVEN
                && chances.filter(one -> one.zone() == Zone.IN).isPresent();
    }

    /** The chance, 0 to 1, that going by the bare value would be wrong: in limits though it is not, or the other way. */
    public double wrong() {
        return chances.map(one -> Math.min(one.inside(), one.outside())).orElse(0.0);
    }

    /** What was found, whether it is proved, and the chance of being wrong; one or more sentences. */
    public String sentence() {
        return new VerdictWords(this).sentence();
    }

    /** The limits that it was held against; the dimension must have some. */
    ToleranceInterval limits() {
        return interval(dimension(), dimension().expect().orElseThrow(), evaluated.figures());
    }

    /** A span of the book as limits. */
    static ToleranceInterval interval(Expect span) {
        return new ToleranceInterval(
                span.atLeast().orElse(Double.NEGATIVE_INFINITY), span.atMost().orElse(Double.POSITIVE_INFINITY));
    }

    /**
     * The limits that figures are held against. Where a clearance has an upper limit only, the book leaves unsaid that a part does not
     * go into a hole that is smaller than it: one that came out below nothing is held against nothing too.
     */
    private static ToleranceInterval interval(Dimension dimension, Expect limits, List<Figure> figures) {
        boolean runs = dimension
                        .derived()
                        .filter(derivation -> derivation.as() == Derivation.As.CLEARANCE)
                        .isPresent()
                && limits.atLeast().isEmpty()
                && limits.atMost().orElse(0) > 0;
        return runs && figures.stream().anyMatch(figure -> figure.value() < 0)
                ? new ToleranceInterval(0, limits.atMost().orElseThrow())
                : interval(limits);
    }

    /** The figure that is the least likely to be in limits; that of unknown doubt only by its value. */
    private static Figure worst(List<Figure> figures, ToleranceInterval interval) {
        return figures.stream()
                .min(Comparator.comparingDouble((Figure figure) ->
                                Conformity.of(figure.quantity(), interval).inside())
                        .thenComparingDouble(figure -> interval.room(figure.value())))
                .orElseThrow();
    }

    private static Condition condition(Evaluated evaluated) {
        Optional<Expect> standard = evaluated.dimension().standard();
        if (standard.isEmpty()) {
            return Condition.NOT_SAID;
        }
        Figure worst = worst(evaluated.figures(), interval(standard.get()));
        if (!worst.doubtKnown()) {
            return Condition.NOT_SAID;
        }
        return switch (Conformity.of(worst.quantity(), interval(standard.get())).zone()) {
            case IN -> Condition.AS_NEW;
            case OUT -> Condition.WORN;
            case UNPROVEN -> Condition.NEARLY_NEW;
        };
    }
}
