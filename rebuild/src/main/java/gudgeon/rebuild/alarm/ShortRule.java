package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.source.Arrivals;
import gudgeon.rebuild.source.Inspection;
import gudgeon.rebuild.source.OrderLine;
import gudgeon.rebuild.source.OrderLine.State;
import gudgeon.rebuild.source.SizeCompared;
import gudgeon.rebuild.source.SizeCompared.Agrees;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** An arrival brought fewer or more than were ordered, something else, or another size. What is late is not told by it. */
final class ShortRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return Stream.concat(counts(build), sizes(build));
    }

    private static Stream<Alarm> counts(Build build) {
        List<String> orders = build.told(Ordered.class).stream()
                .map(told -> told.fact().order())
                .toList();
        // by this day nothing can be late
        return orders.isEmpty()
                ? Stream.empty()
                : Arrivals.of(build, LocalDate.MIN).lines().stream()
                        .filter(line -> orders.contains(line.order()))
                        .filter(line -> line.came() > 0 && line.state() != State.COME)
                        .filter(line -> !build.place(line.position()).isFilled())
                        .map(ShortRule::alarm);
    }

    private static Alarm alarm(OrderLine line) {
        return new Alarm(
                AlarmKind.SHORT,
                Severity.LOOK,
                line.position(),
                "Not as ordered" + (line.order().isEmpty() ? "" : ", order " + line.order()) + ": " + line.sentence(),
                "Found at the bench weeks later, it stops the work, and the seller no longer answers for it.",
                line.state() == State.SHORT
                        ? "Look through the packing once more, and write to the seller today."
                        : "Write to the seller before anything of it is used.",
                line.entries(),
                List.of());
    }

    private static Stream<Alarm> sizes(Build build) {
        return build.told(Ordered.class).stream()
                .filter(told -> !told.fact().sizes().isEmpty())
                .flatMap(told -> build.parts(told.fact().position()).stream()
                        .filter(part -> !part.spent())
                        .flatMap(part -> wrong(build, told, part)));
    }

    private static Stream<Alarm> wrong(Build build, Told<Ordered> told, Part part) {
        String position = told.fact().position();
        List<String> sentences = Inspection.of(build, position, part.name()).stream()
                .flatMap(inspection -> inspection.sizes().stream())
                .filter(size -> size.agrees() == Agrees.NO && !size.ordered().isEmpty())
                .map(SizeCompared::sentence)
                .toList();
        return sentences.isEmpty()
                ? Stream.empty()
                : Stream.of(new Alarm(
                        AlarmKind.SHORT,
                        Severity.STOP,
                        position,
                        "The " + build.structure().name(position) + " '" + part.name()
                                + "' is not the size that was ordered.",
                        "A part of another size goes in and shows it only when all is together.",
                        "Do not fit it; write to the seller with both sizes.",
                        List.of(told.number(), build.lastAbout(part.name())),
                        sentences));
    }
}
