package gudgeon.rebuild.fit;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is tried: which of the book's parts, how they are set, and any size changed on the spot.
 *
 * @param pistonId the piston, or empty for the book's first
 * @param gasketId the gasket, or empty for the book's first
 * @param teethMoved teeth the cam drive is moved; positive makes every valve event later, negative earlier
 * @param valveClearanceMm valve clearance for all valves in place of the book's, in mm
 * @param turned true for the piston turned by half a turn
 * @param changed sizes in place of the book's, by the input's path, in mm or degrees
 */
public record Choice(
        Optional<String> pistonId,
        Optional<String> gasketId,
        int teethMoved,
        OptionalDouble valveClearanceMm,
        boolean turned,
        Map<String, Double> changed) {
    public Choice {
        changed = Map.copyOf(changed);
    }

    /** The book's first piston and gasket, nothing moved or changed. */
    public static Choice asBooked() {
        return new Choice(Optional.empty(), Optional.empty(), 0, OptionalDouble.empty(), false, Map.of());
    }
}
