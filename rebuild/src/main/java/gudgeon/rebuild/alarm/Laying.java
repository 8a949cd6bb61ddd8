package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Laid;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.PartSize;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds which of the parts at hand is to blame for what a trial fit shows. */
final class Laying {
    private final Build build;
    private final AsMeasured parts;
    private final Fits fits;

    Laying(Build build, AsMeasured parts, Fits fits) {
        this.build = build;
        this.parts = parts;
        this.fits = fits;
    }

    /**
     * The position whose part is to blame: with the book's part in its place the trouble would be gone. Of several, the one
     * measured last; the same where only all of them together cause it.
     *
     * @param sound whether a fit is free of the trouble
     */
    Optional<Position> toBlame(Predicate<TrialFit> sound) {
        List<Laid> alone = parts.laid().stream()
                .filter(laid -> AsMeasured.of(
                                build,
                                position -> !position.equals(laid.position().id()))
                        .flatMap(fits::of)
                        .filter(sound)
                        .isPresent())
                .toList();
        return (alone.isEmpty() ? parts.laid() : alone)
                .stream().map(Laid::position).max(Comparator.comparingLong(position -> shownBy(build, position.id())));
    }

    /** Number of the entry that last told sizes of the part that counts for a position, or else that entered it; 0 if none did. */
    static long shownBy(Build build, String position) {
        String part = build.partFor(position).map(Part::name).orElse("");
        long measured = build.lastTold(
                position,
                fact -> (fact instanceof Measured of && of.part().equals(part))
                        || (fact instanceof ReadingTaken read && read.part().equals(part) && isInFigures(build, read)));
        return measured > 0
                ? measured
                : build.partFor(position).map(Part::entered).orElse(0L);
    }

    private static boolean isInFigures(Build build, ReadingTaken read) {
        return build.structure()
                .dimension(read.dimension())
                .flatMap(dimension -> PartSize.booked(build.book(), dimension))
                .isPresent();
    }

    /** The entries that show the sizes of parts, those of the part to blame first. */
    static List<Long> evidence(Build build, Position toBlame) {
        long number = shownBy(build, toBlame.id());
        return number > 0 ? List.of(number) : List.of();
    }
}
