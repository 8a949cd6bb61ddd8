package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A step was begun that a check holds, and the check neither passed nor was waived. */
final class HoldPointRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return UnderHand.steps(build)
                .flatMap(step -> build.step(step.id()).unproven().stream()
                        .filter(check -> isOpen(build.check(check), step))
                        .flatMap(check -> build.structure().check(check).stream())
                        .map(check -> alarm(build, step, check)));
    }

    /** A failed one is another trouble, {@link FailedCheckRule}. */
    private static boolean isOpen(CheckState state, Step step) {
        return !state.lets(step) && state.status() != CheckState.Status.FAILED;
    }

    private static Alarm alarm(Build build, Step step, Check check) {
        CheckState state = build.check(check.id());
        String unproven = state.status() == CheckState.Status.VOID
                ? "' passed once and is void again, since what it relied on was disturbed"
                : "' has not passed";
        String suspects = check.clears().stream()
                .map(build.structure()::name)
                .map(name -> "the " + name)
                .collect(Collectors.joining(", "));
        return new Alarm(
                AlarmKind.HOLD_POINT,
                Severity.STOP,
                check.id(),
                "The step '" + step.name() + "' was begun, and the check '" + check.name() + unproven + ".",
                suspects.isEmpty()
                        ? "Nothing proves yet that it may be done."
                        : "Nothing clears yet: " + suspects + ". A fault there would be found when all is together.",
                "Stop and do the check now, or waive it with the reason written down.",
                state.voidedBy().isPresent()
                        ? List.of(
                                state.voidedBy().getAsLong(),
                                build.step(step.id()).begun())
                        : List.of(build.step(step.id()).begun()),
                List.of());
    }
}
