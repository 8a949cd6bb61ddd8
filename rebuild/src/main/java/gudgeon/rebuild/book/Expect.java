package gudgeon.rebuild.book;

import java.util.OptionalDouble;

/**
 * The span that a reading should lie in, both ends included.
 *
 * @param atLeast the least allowed, in {@code unit}
 * @param atMost the most allowed, in {@code unit}
 * @param unit the unit of both
 */
public record Expect(OptionalDouble atLeast, OptionalDouble atMost, Unit unit) {
    /** Whether a value in {@link #unit} lies in the span. */
    public boolean holds(double value) {
        return (atLeast.isEmpty() || value >= atLeast.getAsDouble())
                && (atMost.isEmpty() || value <= atMost.getAsDouble());
    }

    /** The span in words, such as "0.05 mm to 0.2 mm" or "at most 20 %". */
    public String words() {
        if (atLeast.isPresent() && atMost.isPresent()) {
            return figure(atLeast.getAsDouble()) + " to " + figure(atMost.getAsDouble());
        }
        return atLeast.isPresent()
                ? "at least " + figure(atLeast.getAsDouble())
                : "at most " + figure(atMost.orElse(Double.NaN));
    }

    /** A value in {@link #unit} as a person reads it. */
    public String figure(double value) {
        return unit.figure(value);
    }
}
