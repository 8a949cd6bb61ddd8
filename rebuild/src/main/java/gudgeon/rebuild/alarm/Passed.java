package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact.Disposed;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.measure.Outcome;
import gudgeon.rebuild.measure.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * A part that the person keeps or puts in, with what was measured on it.
 *
 * @param position where it belongs
 * @param by number of the entry with which it was passed: decided to be used again, its step begun, or fitted
 * @param goesIn whether it is going in or is in
 * @param verdicts on all that was measured on it
 */
record Passed(Position position, long by, boolean goesIn, List<Verdict> verdicts) {
    /** Every part passed of which something was measured, in the book's order. */
    static Stream<Passed> all(Build build) {
        return build.structure().positions().stream()
                .filter(position -> build.lastTold(position.id(), ReadingTaken.class::isInstance) > 0)
                .flatMap(position -> of(build, position).stream());
    }

    private static Optional<Passed> of(Build build, Position position) {
        String part = build.partFor(position.id()).map(one -> one.name()).orElse("");
        long goesIn = goesIn(build, position);
        long kept = build.told(Disposed.class, position.id()).stream()
                .filter(told -> told.fact().part().equals(part))
                .reduce((one, other) -> other)
                .filter(told -> told.fact().disposition() == Disposition.USE_AGAIN)
                .map(Told::number)
                .orElse(0L);
        if (goesIn == 0 && kept == 0) {
            return Optional.empty();
        }
        List<Verdict> verdicts = build.structure().dimensionsOf(position.id()).stream()
                .map(dimension -> Verdict.of(build, dimension, part))
                .toList();
        return Optional.of(new Passed(position, Math.max(kept, goesIn), goesIn > 0, verdicts));
    }

    /** Number of the entry with which the part began to go in, 0 if it does not yet. */
    private static long goesIn(Build build, Position position) {
        Place place = build.place(position.id());
        long fitted = place.isOut() ? 0 : place.fitted();
        return build.structure()
                .stepFitting(position.id())
                .map(Step::id)
                .map(build::step)
                .filter(StepState::underHand)
                .map(StepState::begun)
                .orElse(fitted);
    }

    /** Its verdicts of a kind. */
    List<Verdict> verdicts(Predicate<Verdict> which) {
        return verdicts.stream().filter(which).toList();
    }

    /** Its verdicts that come to something. */
    List<Verdict> verdicts(Outcome outcome) {
        return verdicts(verdict -> verdict.outcome() == outcome);
    }

    /** The entry that passed it and those that tell the readings of some verdicts. */
    List<Long> evidence(List<Verdict> of) {
        LongStream readings = of.stream()
                .flatMap(verdict -> verdict.worst().stream())
                .flatMap(worst -> worst.readings().stream())
                .mapToLong(reading -> reading.entry());
        return LongStream.concat(LongStream.of(by), readings)
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }
}
