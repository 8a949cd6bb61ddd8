package gudgeon.mechanics.metrology;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A value with the doubts it carries, all in one unit. Doubts are independent of each other and of those of every other
 * quantity.
 *
 * @param value the best estimate, finite
 * @param doubts its uncertainty components; none for an exact value
 */
public record Quantity(double value, List<Doubt> doubts) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity's value is a finite number, got " + value);
        }
        doubts = List.copyOf(doubts);
    }

    /** A value with the doubts given. */
    public static Quantity of(double value, Doubt... doubts) {
        return new Quantity(value, List.of(doubts));
    }

    /** A value without doubt. */
    public static Quantity exact(double value) {
        return new Quantity(value, List.of());
    }

    /** A figure stated as {@code value ± halfWidth}, see {@link Doubt#stated}. */
    public static Quantity stated(double value, double halfWidth) {
        return of(value, Doubt.stated(halfWidth));
    }

    /** One reading of an instrument, see {@link Doubt#resolution} and {@link Doubt#permissibleError}. */
    public static Quantity read(double value, double resolution, double permissibleError) {
        return of(value, Doubt.resolution(resolution), Doubt.permissibleError(permissibleError));
    }

    /**
     * The mean of repeat readings with the doubt of their scatter, see {@link Doubt#repeatReadings}. The instrument's own
     * doubts do not average out: add them with {@link #with}.
     *
     * @throws IllegalArgumentException if there are fewer than two readings, or one is not finite
     */
    public static Quantity meanOf(double... readings) {
        Doubt scatter = Doubt.repeatReadings(readings);
        return of(Doubt.mean(readings), scatter);
    }

    /** This quantity with further doubts. */
    public Quantity with(Doubt... further) {
        return new Quantity(
                value, Stream.concat(doubts.stream(), Stream.of(further)).toList());
    }

    /** The sum with another quantity whose doubts are independent of this one's: their doubts add up. */
    public Quantity plus(Quantity other) {
        return joined(value + other.value, other);
    }

    /** The difference from another quantity whose doubts are independent of this one's: their doubts add up too. */
    public Quantity minus(Quantity other) {
        return joined(value - other.value, other);
    }

    /** This quantity moved by an exact amount. */
    public Quantity plus(double exact) {
        return new Quantity(value + exact, doubts);
    }

    /** This quantity times an exact factor, such as one that changes its unit. */
    public Quantity times(double factor) {
        return new Quantity(
                value * factor,
                doubts.stream().map(doubt -> doubt.times(factor)).toList());
    }

    /** The combined standard uncertainty: the root of the sum of the squares of the components (JCGM 100:2008, 5.1.2). */
    public double standardUncertainty() {
        double sum = 0;
        for (Doubt doubt : doubts) {
            sum += doubt.standardUncertainty() * doubt.standardUncertainty();
        }
        return Math.sqrt(sum);
    }

    /**
     * The degrees of freedom of the combined standard uncertainty, infinite where it follows from stated bounds alone:
     * the Welch-Satterthwaite formula (JCGM 100:2008, G.4.1).
     */
    public double degreesOfFreedom() {
        double u = standardUncertainty();
        double sum = 0;
        for (Doubt doubt : doubts) {
            sum += u == 0 ? 0 : Math.pow(doubt.standardUncertainty() / u, 4) / doubt.degreesOfFreedom();
        }
        return 1 / sum;
    }

    private Quantity joined(double joinedValue, Quantity other) {
        List<Doubt> all = new ArrayList<>(doubts);
        all.addAll(other.doubts);
        return new Quantity(joinedValue, all);
    }
}
