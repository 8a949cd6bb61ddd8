package gudgeon.mechanics.bolt;

import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.thread.Engagement;
import gudgeon.mechanics.thread.MetalStrength;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What holds a fastener.
 *
 * @param into metal that its thread is cut in, if known
 * @param engagedMm length over which the threads engage, in mm, if known
 * @param under metal that its head bears on, if known
 */
public record Seat(Optional<Material> into, OptionalDouble engagedMm, Optional<Material> under) {
    /** Pull in N at which a thread strips; empty unless metal and engagement are known. */
    OptionalDouble stripsAtN(Bolt bolt) {
        if (into.isEmpty() || engagedMm.isEmpty()) {
            return OptionalDouble.empty();
        }
        double shear = MetalStrength.of(into.get()).shearMpa();
        return OptionalDouble.of(new Engagement(bolt.thread(), engagedMm.getAsDouble())
                .stripsAtN(shear, bolt.strength().shearMpa()));
    }

    /** Pull in N at which the metal under the head is pressed in if it is of the weaker grade; empty where it is not known. */
    OptionalDouble pressedInAtN(Bolt bolt) {
        return atPressure(bolt, MetalStrength::pressureMpa);
    }

    /** The same of the better grade, so that it is pressed in whatever grade it is. */
    OptionalDouble surelyPressedInAtN(Bolt bolt) {
        return atPressure(bolt, MetalStrength::surePressureMpa);
    }

    private OptionalDouble atPressure(Bolt bolt, ToDoubleFunction<MetalStrength> pressureMpa) {
        return under.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(pressureMpa.applyAsDouble(MetalStrength.of(under.get()))
                        * bolt.head().areaMm2(bolt.thread()));
    }
}
