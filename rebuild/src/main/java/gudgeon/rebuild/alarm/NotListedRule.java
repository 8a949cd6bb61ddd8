package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.build.Place;
import gudgeon.rebuild.journal.Fact.Undone;
import java.util.List;
import java.util.stream.Stream;

/** Opening the engine again destroyed a part that is not on the list to buy. What strip-down takes off is no surprise. */
final class NotListedRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().positions().stream()
                .filter(position -> isLacking(build, position.id()))
                .map(position -> alarm(build, position));
    }

    private static boolean isLacking(Build build, String position) {
        Place place = build.place(position);
        boolean openedAgain = place.destroyed()
                && (place.fitted() > 0
                        || build.fact(place.removed())
                                .filter(Undone.class::isInstance)
                                .isPresent());
        return openedAgain
                && place.removed() > place.supply().listed()
                && place.supply().ordered() + place.supply().arrived() == 0
                && build.parts(position).stream().allMatch(Part::spent);
    }

    private static Alarm alarm(Build build, Position position) {
        return new Alarm(
                AlarmKind.NOT_LISTED,
                Severity.LOOK,
                position.id(),
                "Opening the engine again destroyed the " + position.name() + ", and it is not on the list to buy.",
                "It can be used only once. Missed now, it stops the work later, or the old one goes in again.",
                "Order a new one, or put it on the list.",
                List.of(build.place(position.id()).removed()),
                List.of());
    }
}
