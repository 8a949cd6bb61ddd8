package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.valvework.SpringRoom;
import java.util.List;
import java.util.stream.Stream;

/** A valve spring's coils meet, or nearly do, before the valve is fully open. */
final class CoilBindRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return SpringRoom.all(build).stream().filter(SpringRoom::isShort).map(CoilBindRule::alarm);
    }

    private static Alarm alarm(SpringRoom room) {
        return new Alarm(
                AlarmKind.COIL_BIND,
                Severity.STOP,
                room.fitted().of(),
                "At the " + room.fitted().name() + " the coils "
                        + (room.binds() ? "meet before full lift." : "all but meet at full lift."),
                "A spring that binds stops the valve dead: it bends a pushrod, wears the cam or throws the collets.",
                room.shims()
                        + " Measure the fitted height again; a closed spring can fly, keep your eyes out of its line.",
                List.of(room.number()),
                List.of(room.sentence()));
    }
}
