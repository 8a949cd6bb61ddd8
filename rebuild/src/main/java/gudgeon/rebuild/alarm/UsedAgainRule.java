package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.journal.Origin;
import java.util.List;
import java.util.stream.Stream;

/** A part that can be used only once goes in a second time. */
final class UsedAgainRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return UnderHand.steps(build)
                .flatMap(step -> step.fits().stream()
                        .flatMap(id -> build.structure().position(id).stream())
                        .filter(Position::singleUse)
                        .filter(position -> isUsed(build, position))
                        .map(position -> alarm(build, position, UnderHand.number(build.step(step.id())))));
    }

    /** Whether the part that is in it, or the only one there is to go in, was used before. */
    private static boolean isUsed(Build build, Position position) {
        Place place = build.place(position.id());
        return switch (place.status()) {
            case AS_FOUND -> false;
            case IN, PARTLY_IN ->
                build.part(position.id(), place.part())
                        .filter(UsedAgainRule::wasUsed)
                        .isPresent();
            case OUT ->
                place.supply().arrived() == 0
                        && build.partFor(position.id())
                                .filter(UsedAgainRule::wasUsed)
                                .isPresent();
        };
    }

    private static boolean wasUsed(Part part) {
        return part.name().isEmpty()
                || part.spent()
                || part.origin().filter(origin -> origin == Origin.USED).isPresent();
    }

    private static Alarm alarm(Build build, Position position, long number) {
        Place place = build.place(position.id());
        boolean in = !place.isOut();
        return new Alarm(
                AlarmKind.USED_AGAIN,
                Severity.STOP,
                position.id(),
                "The " + position.name() + (in ? " went in again" : " is about to go in again")
                        + ", and it can be used only once.",
                position.seals()
                        ? "Once pressed it does not seal a second time."
                        : "Once bent or sprung it no longer holds, and what it holds comes loose while running.",
                "Fit a new one; if none is in hand, order it now and stop here.",
                in && place.fitted() != number ? List.of(number, place.fitted()) : List.of(number),
                List.of());
    }
}
