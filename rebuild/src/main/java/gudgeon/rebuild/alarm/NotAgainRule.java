package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Again;
import gudgeon.rebuild.fasten.JointNow;
import java.util.List;
import java.util.stream.Stream;

/** The work went on past the tightening again that a joint needs after the first heat. */
final class NotAgainRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return JointNow.all(build).stream()
                .flatMap(joint -> Again.of(build, joint).stream())
                .flatMap(again ->
                        again.passedBy(build).stream().findFirst().stream().map(step -> alarm(build, again, step)));
    }

    private static Alarm alarm(Build build, Again again, Step step) {
        return new Alarm(
                AlarmKind.NOT_AGAIN,
                Severity.STOP,
                again.joint().id(),
                "The step '" + step.name() + "' was begun, and the "
                        + again.joint().name() + " were not tightened again "
                        + again.joint().again() + ".",
                "A new gasket settles with the first heat: the joint is slack, blows, and burns its gasket and face.",
                "Let the engine go cold, then do '" + again.step().name() + "' before it runs again. Hot parts burn.",
                List.of(build.step(step.id()).begun()),
                List.of());
    }
}
