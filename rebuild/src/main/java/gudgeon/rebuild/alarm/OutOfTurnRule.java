package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.CheckState.Status;
import java.util.List;
import java.util.stream.Stream;

/** A check was done before another that it can't be believed without. */
final class OutOfTurnRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().checks().stream()
                .filter(check -> isAnswered(build.check(check.id())))
                .flatMap(check -> build.check(check.id()).outOfTurn().stream()
                        .flatMap(first -> build.structure().check(first).stream())
                        .map(first -> alarm(build, check, first)));
    }

    private static boolean isAnswered(CheckState state) {
        return state.status() == Status.PASSED || state.status() == Status.FAILED;
    }

    private static Alarm alarm(Build build, Check check, Check first) {
        return new Alarm(
                AlarmKind.OUT_OF_TURN,
                Severity.LOOK,
                check.id(),
                "The check '" + check.name() + "' was done while '" + first.name() + "' had not passed.",
                "What it says can't be believed: the fault may lie where the other check would have shown it.",
                "Do '" + first.name() + "' first, then this one again; condemn nothing on this reading.",
                List.of(build.check(check.id()).at()),
                List.of());
    }
}
