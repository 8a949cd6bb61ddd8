package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.util.List;
import java.util.stream.Stream;

/** A copy goes into a critical position without having been compared, or one that did not agree goes in anywhere. */
final class NothingComparedRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().positions().stream()
                .filter(position -> !build.parts(position.id()).isEmpty())
                .flatMap(position ->
                        build.partFor(position.id()).stream().flatMap(part -> alarm(build, position, part)));
    }

    private static Stream<Alarm> alarm(Build build, Position position, Part part) {
        long goesIn = goesIn(build, position);
        if (!part.agrees()) {
            return Stream.of(differs(position, part, goesIn));
        }
        boolean unknown = part.mayDiffer()
                && part.compared().isEmpty()
                && part.sizes().isEmpty()
                && !isRead(build, position, part);
        return position.critical() && unknown && goesIn > 0
                ? Stream.of(notCompared(position, part, goesIn))
                : Stream.empty();
    }

    private static boolean isRead(Build build, Position position, Part part) {
        return build.told(ReadingTaken.class, position.id()).stream()
                .anyMatch(told -> told.fact().part().equals(part.name()));
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

    private static Alarm notCompared(Position position, Part part, long goesIn) {
        String what = position.compare().isEmpty() ? "its sizes" : String.join(", ", position.compare());
        return new Alarm(
                AlarmKind.NOTHING_COMPARED,
                Severity.STOP,
                position.id(),
                "The " + position.name() + " '" + part.name() + "' goes in and nothing of it was compared.",
                "The wrong size here ruins the engine, and a copy may differ where nobody looks.",
                "Hold it against the old part and the book before it goes in: " + what + ".",
                part.entered() > 0 && part.entered() != goesIn ? List.of(part.entered(), goesIn) : List.of(goesIn),
                List.of());
    }

    private static Alarm differs(Position position, Part part, long goesIn) {
        return new Alarm(
                AlarmKind.DIFFERS,
                goesIn > 0 ? Severity.STOP : Severity.LOOK,
                position.id(),
                "The " + position.name() + " '" + part.name() + "' does not agree with the old part: "
                        + String.join(", ", part.differing()) + ".",
                "What differs from the old part seldom fits by itself, and shows it only when all is together.",
                "Measure by how much, and send it back, rework it, or find out that the difference does no harm.",
                goesIn > 0 ? List.of(goesIn) : part.entered() > 0 ? List.of(part.entered()) : List.of(),
                List.of());
    }
}
