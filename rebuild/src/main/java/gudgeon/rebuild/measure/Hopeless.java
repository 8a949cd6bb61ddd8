package gudgeon.rebuild.measure;

import gudgeon.mechanics.metrology.Conformity;
import gudgeon.mechanics.metrology.ToleranceInterval;
import gudgeon.mechanics.metrology.Zone;
import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Derivation.As;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Figures;
import gudgeon.rebuild.reading.OwnInstrument;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Tells before anything is measured that an instrument is too coarse: with it not even the best of parts could be proved. */
public final class Hopeless {
    private Hopeless() {}

    /**
     * The warning, a sentence; empty where the instrument may prove something, or where nothing is known to hold it against.
     *
     * @param dimension one that is read; its own limits count, and those of what follows from it
     */
    public static Optional<String> of(Build build, Dimension dimension, OwnInstrument instrument) {
        if (instrument.scale().unit() != dimension.unit()) {
            return Optional.of("The " + instrument.name() + " does not measure in "
                    + dimension.unit().symbol() + ".");
        }
        OwnInstruments own = OwnInstruments.of(build.instruments());
        return limited(build, dimension)
                .flatMap(one -> warning(one, dimension, instrument, own).stream())
                .findFirst();
    }

    /** What has limits of a dimension that is read and of the clearances that follow from it. */
    static Stream<Dimension> limited(Build build, Dimension dimension) {
        Stream<Dimension> follow = build.structure().dimensions().stream()
                .filter(other -> other.derived()
                        .filter(how -> isClearanceOf(how, dimension))
                        .isPresent());
        return Stream.concat(Stream.of(dimension), follow)
                .filter(one -> one.expect().isPresent());
    }

    /** The doubt of a clearance is never less than that of one of its two; ovality and taper are better than that. */
    private static boolean isClearanceOf(Derivation how, Dimension dimension) {
        return (how.as() == As.CLEARANCE || how.as() == As.DIFFERENCE)
                && how.of().contains(dimension.id());
    }

    private static Optional<String> warning(
            Dimension limited, Dimension read, OwnInstrument instrument, OwnInstruments own) {
        OptionalDouble best = best(limited);
        if (limited.expect().isEmpty() || best.isEmpty()) {
            return Optional.empty();
        }
        // what it is set with hangs on the size itself, not on the clearance
        double size = best(read).orElse(best.getAsDouble());
        Figure single = Figures.single(read, size, instrument, own);
        Expect limits = limited.expect().get();
        Conformity chances = Conformity.of(
                best.getAsDouble(),
                single.quantity().standardUncertainty(),
                Double.POSITIVE_INFINITY,
                Verdict.interval(limits));
        if (chances.zone() == Zone.IN) {
            return Optional.empty();
        }
        return Optional.of("The " + instrument.name() + " is too coarse: it leaves "
                + read.unit().figure(single.expanded()) + " of doubt either way, and the " + limited.name()
                + " has to be " + limits.words() + ". Not even a part as new could be proved with it.");
    }

    /** The value of a part as good as can be: the middle of a new one's range, else of the limits if there are two. */
    static OptionalDouble best(Dimension dimension) {
        OptionalDouble asNew = dimension.standard().map(Hopeless::middle).orElse(OptionalDouble.empty());
        OptionalDouble middle = dimension.expect().map(Hopeless::middle).orElse(OptionalDouble.empty());
        Optional<ToleranceInterval> limits = dimension.expect().map(Verdict::interval);
        boolean usable = asNew.isPresent()
                && limits.filter(one -> one.holds(asNew.getAsDouble())).isPresent();
        return usable || limits.isEmpty() ? asNew : middle;
    }

    private static OptionalDouble middle(Expect span) {
        return span.atLeast().isPresent() && span.atMost().isPresent()
                ? OptionalDouble.of(
                        (span.atLeast().getAsDouble() + span.atMost().getAsDouble()) / 2)
                : OptionalDouble.empty();
    }
}
