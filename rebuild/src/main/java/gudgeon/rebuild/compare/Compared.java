package gudgeon.rebuild.compare;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One line of a comparison.
 *
 * @param key the size's path within the part, such as {@code pockets.exhaust.depth}
 * @param label what a fitter calls it
 * @param unit its unit, empty where none
 * @param a of the first part, empty where it has none
 * @param b of the second part, empty where it has none
 * @param standardUncertainty of the difference, the doubts of both taken as independent
 * @param likeness what can be said of the two
 * @param sentence the line as a person reads it
 * @param effects what this difference alone does, the largest first
 */
public record Compared(
        String key,
        String label,
        String unit,
        OptionalDouble a,
        OptionalDouble b,
        double standardUncertainty,
        Likeness likeness,
        String sentence,
        List<Effect> effects) {
    public Compared {
        effects = List.copyOf(effects);
    }

    /** Second less first, where both have it. */
    public OptionalDouble difference() {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(b.getAsDouble() - a.getAsDouble())
                : OptionalDouble.empty();
    }
}
