package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StartRound;
import java.util.List;
import java.util.stream.Stream;

/** The first start was begun, and the list before it was not signed since something last came off. */
final class UnsignedRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        StartRound round = StartRound.of(build);
        return round.begun() == 0 || round.signed().isPresent()
                ? Stream.empty()
                : StartRound.step(build).stream().map(step -> alarm(step, round));
    }

    private static Alarm alarm(Step step, StartRound round) {
        return new Alarm(
                AlarmKind.UNSIGNED,
                Severity.STOP,
                step.id(),
                "The step '" + step.name() + "' was begun, and the list before the first start is not signed.",
                "What nobody went through is found when the engine runs: no oil, an open throttle, no way to stop it.",
                "Stop it, go through the list, and sign it before it is started again.",
                List.of(round.begun()),
                List.of());
    }
}
