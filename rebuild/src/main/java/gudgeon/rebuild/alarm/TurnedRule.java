package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.journal.Way;
import java.util.List;
import java.util.stream.Stream;

/** A part went in turned by half a turn, where that matters. */
final class TurnedRule implements Rule {
    private final Fits fits;

    TurnedRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().positions().stream()
                .filter(position -> isTurned(build.place(position.id())))
                .flatMap(position -> position.sizes().equals("pistons")
                        ? piston(build, position)
                        : Stream.of(position)
                                .filter(one -> !one.mark().isEmpty())
                                .map(one -> alarm(build, one, AlarmKind.TURNED, List.of())));
    }

    private static boolean isTurned(Place place) {
        return place.way() == Way.TURNED && !place.isOut();
    }

    /** A piston without a mark may still have pockets that differ. */
    private Stream<Alarm> piston(Build build, Position position) {
        List<String> touching = AsMeasured.of(build)
                .flatMap(parts -> fits.of(parts, 0, true))
                .map(fit -> Fits.troubles(fit).stream().map(Finding::sentence).toList())
                .orElse(List.of());
        return position.mark().isEmpty() && touching.isEmpty()
                ? Stream.empty()
                : Stream.of(alarm(build, position, AlarmKind.PISTON_TURNED, touching));
    }

    private static Alarm alarm(Build build, Position position, AlarmKind kind, List<String> figures) {
        String mark = position.mark().isEmpty() ? "" : " The book says: " + position.mark() + ".";
        return new Alarm(
                kind,
                Severity.STOP,
                position.id(),
                "The " + position.name() + " went in turned by half a turn." + mark,
                kind == AlarmKind.PISTON_TURNED
                        ? "Each valve comes down on the other's pocket, and the pin's offset is on the wrong side."
                        : "A part with a direction works, or lasts, only one way round.",
                "Take it out and turn it, before anything covers it.",
                List.of(build.place(position.id()).fitted()),
                figures);
    }
}
