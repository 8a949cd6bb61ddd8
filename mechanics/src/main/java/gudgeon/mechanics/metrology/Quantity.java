package gudgeon.mechanics.metrology;

import java.util.List;

/**
 * A value with the doubts it carries, all in one unit.
 *
 * @param value the best estimate
 * @param doubts its uncertainty components; none for an exact value
 */
public record Quantity(double value, List<Doubt> doubts) {
    public Quantity {
        doubts = List.copyOf(doubts);
    }

    /** A value without doubt. */
    public static Quantity exact(double value) {
        return new Quantity(value, List.of());
    }

    /** The combined standard uncertainty: the root of the sum of the squares of the components (JCGM 100:2008, 5.1.2). */
    public double standardUncertainty() {
        double sum = 0;
        for (Doubt doubt : doubts) {
            sum += doubt.standardUncertainty() * doubt.standardUncertainty();
        }
        return Math.sqrt(sum);
    }
}
