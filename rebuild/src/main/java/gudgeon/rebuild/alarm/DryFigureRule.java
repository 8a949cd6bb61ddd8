package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.fasten.HoleTorque;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Slickness;
import gudgeon.rebuild.fasten.TorqueCheck;
import gudgeon.rebuild.journal.Fastening.Lubricated;
import gudgeon.rebuild.sentence.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The maker's figure is for a rougher thread than the joint has, and on this one it is more than bolt or thread bears. */
final class DryFigureRule implements Rule {
    @Override
    public Stream<Alarm> alarms(Build build) {
        return build.structure().joints().stream().flatMap(joint -> alarm(build, joint).stream());
    }

    private static Optional<Alarm> alarm(Build build, Joint joint) {
        Optional<Told<Lubricated>> told = build.told(Lubricated.class, joint.id()).stream()
                .filter(one -> one.fact().joint().equals(joint.id()))
                .reduce((earlier, later) -> later);
        Lubrication meant = joint.lubricated().orElse(Lubrication.OILED);
        if (told.isEmpty() || !Slickness.isSlicker(told.get().fact().how(), meant)) {
            return Optional.empty();
        }
        List<HoleTorque> beyond = HoleTorque.all(JointNow.of(build, joint)).stream()
                .filter(torque -> torque.maker().isPresent())
                .filter(torque -> torque.check()
                        .filter(check -> !check.isBorneByBoltAndThread())
                        .isPresent())
                .toList();
        return beyond.isEmpty() ? Optional.empty() : Optional.of(alarm(joint, meant, told.get(), beyond));
    }

    private static Alarm alarm(Joint joint, Lubrication meant, Told<Lubricated> told, List<HoleTorque> beyond) {
        HoleTorque first = beyond.get(0);
        TorqueCheck check = first.check().orElseThrow();
        List<String> figures = new ArrayList<>(first.assumed());
        figures.addAll(check.sentences());
        return new Alarm(
                AlarmKind.DRY_FIGURE,
                Severity.STOP,
                joint.id(),
                "The torque of the " + joint.name() + " is meant for threads that are " + meant.words()
                        + ", and they are "
                        + told.fact().how().words() + ": that is too much for bolt or thread at "
                        + Amount.of(beyond.size(), "hole") + ".",
                "On a thread that slides more easily the same torque pulls much harder; the bolt stretches or the thread in the casting strips.",
                "Clean the threads until they are " + meant.words() + " as the maker means it, or use less"
                        + (first.asItIsNm().isPresent()
                                ? ": about "
                                        + HoleTorque.newtonMetres(
                                                first.asItIsNm().getAsDouble()) + " gives the same pull."
                                : "."),
                List.of(told.number()),
                figures);
    }
}
