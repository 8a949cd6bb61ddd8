package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.StepState;
import java.util.List;
import java.util.stream.Stream;

/** Work goes on past a failed check, burying what it failed on. */
final class FailedCheckRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().checks().stream()
                .filter(check -> build.check(check.id()).status() == CheckState.Status.FAILED)
                .flatMap(check -> stopped(build.structure(), check)
                        .filter(step -> wentOn(build.step(step.id()), build.check(check.id())))
                        .map(step -> alarm(build, check, step)));
    }

    /** The steps that must wait for a check: those it holds, and those that cover a suspect. */
    private static Stream<Step> stopped(Structure structure, Check check) {
        Stream<Step> held = check.holds().stream().flatMap(id -> structure.step(id).stream());
        Stream<Step> burying =
                structure.cleared(check).stream().flatMap(position -> structure.stepsBurying(position).stream());
        return Stream.concat(held, burying).distinct();
    }

    private static boolean wentOn(StepState step, CheckState check) {
        return step.underHand() && UnderHand.number(step) > check.at();
    }

    private static Alarm alarm(Build build, Check check, Step step) {
        CheckState state = build.check(check.id());
        String seen = state.remark().isEmpty() ? "" : " (" + state.remark() + ")";
        return new Alarm(
                AlarmKind.FAILED_CHECK,
                Severity.STOP,
                check.id(),
                "The check '" + check.name() + "' failed" + seen + ", and the step '" + step.name()
                        + "' goes on all the same.",
                "It buries what the check failed on; the fault is still in there.",
                "Stop, find the fault and put it right, and do the check again before anything covers it.",
                List.of(state.at(), UnderHand.number(build.step(step.id()))),
                List.of());
    }
}
