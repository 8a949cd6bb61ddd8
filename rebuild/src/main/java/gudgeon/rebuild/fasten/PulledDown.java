package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.Tightened;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A gasketed joint whose first fasteners were pulled to full torque while others had nothing yet.
 *
 * @param joint the joint
 * @param first the fastener tightened first
 * @param second the one tightened second
 * @param atOneEnd whether these two are the nearest neighbours of each other, so that it comes down from one end
 */
public record PulledDown(JointNow joint, Told<Tightened> first, Told<Tightened> second, boolean atOneEnd) {
    /** From this share of the full torque on a first pass is taken to be the last: common practice, no source. */
    private static final double FULL = 0.85;

    /** Whether a joint was, while that can still be put right; one that is tight by now is not looked at. */
    public static Optional<PulledDown> of(JointNow joint) {
        List<Told<Tightened>> torqued = joint.holes().stream()
                .flatMap(hole -> hole.tightened().stream())
                .filter(told -> !told.fact().torque().isEmpty())
                .sorted(Comparator.comparingLong(Told::number))
                .toList();
        boolean even = joint.book().gasket() && joint.holes().size() > 2;
        if (!even || torqued.size() < 2 || Tightness.of(joint).isTight()) {
            return Optional.empty();
        }
        Told<Tightened> first = torqued.get(0);
        Told<Tightened> second = torqued.get(1);
        return isFull(joint, first)
                        && isFull(joint, second)
                        && !first.fact().hole().equals(second.fact().hole())
                ? Optional.of(new PulledDown(joint, first, second, areNeighbours(joint, first, second)))
                : Optional.empty();
    }

    private static boolean isFull(JointNow joint, Told<Tightened> told) {
        Optional<Double> full =
                joint.hole(told.fact().hole()).flatMap(joint::makersTorque).map(Quantity::value);
        Optional<Double> set =
                TypedSize.quantity(Unit.NEWTON_METRE, told.fact().torque()).map(Quantity::value);
        if (full.isPresent() && set.isPresent()) {
            return set.get() >= FULL * full.get();
        }
        return Tightness.of(joint).passes().stream()
                .filter(pass -> pass.share() == 1)
                .findFirst()
                .filter(pass -> told.fact().pass() >= pass.number())
                .isPresent();
    }

    private static boolean areNeighbours(JointNow joint, Told<Tightened> first, Told<Tightened> second) {
        return nearest(joint, first.fact().hole())
                        .equals(Optional.of(second.fact().hole()))
                || nearest(joint, second.fact().hole())
                        .equals(Optional.of(first.fact().hole()));
    }

    private static Optional<String> nearest(JointNow joint, String id) {
        return joint.hole(id)
                .flatMap(HoleNow::at)
                .flatMap(at -> joint.holes().stream()
                        .filter(hole -> !hole.id().equals(id) && hole.at().isPresent())
                        .min(Comparator.comparingDouble(hole -> Math.hypot(
                                hole.at().orElseThrow().x() - at.x(),
                                hole.at().orElseThrow().y() - at.y())))
                        .map(HoleNow::id));
    }
}
