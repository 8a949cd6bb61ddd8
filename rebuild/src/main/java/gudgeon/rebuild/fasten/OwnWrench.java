package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.TorqueUnit;
import gudgeon.mechanics.bolt.WrenchRange;
import java.util.OptionalDouble;

/**
 * A torque wrench of the person's own.
 *
 * @param name its name, the person's own
 * @param range what its scale spans
 * @param unit the unit of its scale
 * @param stepNm the least step of its scale in N·m, if known
 * @param errorPercent by how much of the reading it may err, in percent, if the person knows
 */
public record OwnWrench(
        String name, WrenchRange range, TorqueUnit unit, OptionalDouble stepNm, OptionalDouble errorPercent) {
    /** By how much of the reading it may err, in percent: what is known of it, else what ISO 6789 permits. */
    public double mayErrPercent() {
        return errorPercent.orElse(range.permissiblePercent());
    }

    /** What it can be trusted for, a sentence. */
    public String sentence() {
        return "The " + name + " can be trusted from " + in(range.trustedFromNm()) + " to " + in(range.mostNm())
                + "; it may err by " + WrittenTorque.number(mayErrPercent()) + " % of the reading"
                + (errorPercent.isPresent() ? "." : ", as ISO 6789 permits; nobody said what it really does.");
    }

    /** A torque in N·m in the unit of its scale, as a person reads it. */
    public String in(double nm) {
        return new WrittenTorque(unit.fromNm(nm), unit).words();
    }
}
