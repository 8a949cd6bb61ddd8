package gudgeon.rebuild.alarm;

import gudgeon.mechanics.bolt.Adapter;
import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.OwnWrench;
import gudgeon.rebuild.fasten.WrenchFor;
import gudgeon.rebuild.journal.Fastening.WrenchChosen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The wrench taken for a joint: it can't be trusted for the torque, its setting is the right number in a wrong unit, or an adapter
 * on it was not reckoned with.
 */
final class WrenchRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return JointNow.all(build).stream()
                .flatMap(joint -> WrenchFor.of(build, joint).stream())
                .flatMap(WrenchRule::alarms);
    }

    private static Stream<Alarm> alarms(WrenchFor taken) {
        List<Alarm> alarms = new ArrayList<>();
        taken.distrust().ifPresent(why -> alarms.add(distrusted(taken, why)));
        taken.mixed().ifPresent(mixed -> alarms.add(mixed(taken, mixed)));
        if (taken.isAdapterForgotten()) {
            alarms.add(forgotten(taken));
        }
        return alarms.stream();
    }

    private static Alarm distrusted(WrenchFor taken, String why) {
        List<OwnWrench> better = taken.better();
        return alarm(
                taken,
                AlarmKind.WRENCH,
                "The wrench '" + taken.chosen().fact().wrench() + "' can't be trusted for the torque of the "
                        + taken.joint().book().name() + ".",
                "Low on its scale a wrench clicks late or not at all, and a small screw or a thread in alloy is gone before.",
                better.isEmpty()
                        ? "None of your wrenches serves; borrow one in whose scale this torque lies above the lowest fifth."
                        : "Take the " + better.get(0).name() + ".",
                List.of(why));
    }

    private static Alarm mixed(WrenchFor taken, String figures) {
        return alarm(
                taken,
                AlarmKind.UNIT_MIXED,
                "The setting for the " + taken.joint().book().name() + " is the right number in a wrong unit.",
                "A pound-foot is more than a newton metre and a pound-inch far less: the screw breaks, or stays loose.",
                "Set the wrench to " + taken.rightSettings() + ".",
                List.of(figures));
    }

    private static Alarm forgotten(WrenchFor taken) {
        Optional<Adapter> adapter = taken.adapter();
        return alarm(
                taken,
                AlarmKind.ADAPTER,
                "The adapter on the wrench for the " + taken.joint().book().name()
                        + " is not reckoned with in its setting.",
                "An adapter that reaches beyond the drive makes the arm longer: the fastener gets more than the scale says.",
                adapter.isPresent()
                        ? "Set the wrench to " + taken.rightSettings()
                                + ", or turn the adapter square to the wrench, where it changes nothing."
                        : "Measure the wrench from the middle of its drive to the middle of its grip, so that the setting can be worked out, or turn the adapter square to the wrench.",
                adapter.map(one -> List.of("The fastener would get " + taken.givesWords(one) + "."))
                        .orElse(List.of()));
    }

    private static Alarm alarm(
            WrenchFor taken, AlarmKind kind, String what, String why, String todo, List<String> figures) {
        Told<WrenchChosen> told = taken.chosen();
        return new Alarm(kind, Severity.STOP, taken.joint().id(), what, why, todo, List.of(told.number()), figures);
    }
}
