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
                .flatMap(check -> check.after().stream()
                        .filter(first -> !stood(build.check(first), build.check(check.id())))
                        .flatMap(first -> build.structure().check(first).stream())
                        .map(first -> alarm(build, check, first)));
    }

    private static boolean isAnswered(CheckState state) {
        return state.status() == Status.PASSED || state.status() == Status.FAILED;
    }

    /** Whether a check stood as passed when another was done. */
    private static boolean stood(CheckState first, CheckState then) {
        boolean before = first.at() < then.at();
        return switch (first.status()) {
            case PASSED -> before;
            case VOID -> before && first.voidedBy().orElse(0) > then.at();
            case OPEN, FAILED, WAIVED -> false;
        };
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
