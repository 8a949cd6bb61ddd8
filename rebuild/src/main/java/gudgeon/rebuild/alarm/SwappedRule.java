package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Swapped;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Two holes were given each other's length. */
final class SwappedRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return Swapped.of(build).stream().map(SwappedRule::alarm);
    }

    private static Alarm alarm(Swapped swapped) {
        Swapped.Given first = swapped.first();
        Swapped.Given second = swapped.second();
        return new Alarm(
                AlarmKind.FASTENERS_SWAPPED,
                Severity.STOP,
                second.joint(),
                "The fasteners of " + first.hole() + " and " + second.hole()
                        + " are mixed up: each has the other's length.",
                "The count comes out, and yet one holds by too little thread and the other may bottom.",
                "Change the two over before any torque is put on.",
                List.of(first.entry(), second.entry()),
                List.of(figure(first), figure(second)));
    }

    private static String figure(Swapped.Given given) {
        return String.format(
                Locale.ROOT,
                "%s was given %.4g mm, and %.4g mm belong there.",
                given.hole(),
                given.length().value(),
                given.wanted().value());
    }
}
