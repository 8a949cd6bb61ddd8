package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Order;
import gudgeon.rebuild.fasten.PulledDown;
import java.util.List;
import java.util.stream.Stream;

/** A gasketed joint is pulled to full torque in one pass, as from one end. */
final class PulledDownRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return JointNow.all(build).stream()
                .flatMap(joint -> PulledDown.of(joint).stream())
                .map(PulledDownRule::alarm);
    }

    private static Alarm alarm(PulledDown pulled) {
        JointNow joint = pulled.joint();
        return new Alarm(
                AlarmKind.PULLED_DOWN,
                Severity.STOP,
                joint.id(),
                "The joint '" + joint.book().name() + "' is being pulled to full torque in one pass"
                        + (pulled.atOneEnd() ? ", from one end." : "."),
                "The gasket is squeezed out here and not gripped there, and the cover bends or cracks.",
                "Slacken these two, bring all in by hand, then go by this order in passes: "
                        + String.join(", ", Order.of(joint).holes()) + ".",
                List.of(pulled.first().number(), pulled.second().number()),
                List.of(Order.of(joint).why()));
    }
}
