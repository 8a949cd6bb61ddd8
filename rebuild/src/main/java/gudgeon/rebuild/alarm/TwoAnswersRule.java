package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Clash;
import gudgeon.rebuild.journal.Telling;
import java.util.List;
import java.util.stream.Stream;

/** Two devices say what can't both be true. */
final class TwoAnswersRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.clashes().stream().map(clash -> alarm(build, clash));
    }

    private static Alarm alarm(Build build, Clash clash) {
        return new Alarm(
                AlarmKind.TWO_ANSWERS,
                Severity.STOP,
                build.entry(clash.later()).fact().about(),
                "Two devices say different things of the same: entry " + clash.earlier() + " and entry " + clash.later()
                        + ".",
                "The later one was made without knowing the earlier, so only one can be believed.",
                "Look at the engine, and correct the entry that is wrong.",
                List.of(clash.earlier(), clash.later()),
                List.of(told(build, clash.earlier()), told(build, clash.later())));
    }

    private static String told(Build build, long number) {
        return "Entry " + number + ", from the device '" + build.entry(number).device() + "': "
                + Telling.of(build.entry(number).fact(), build.structure());
    }
}
