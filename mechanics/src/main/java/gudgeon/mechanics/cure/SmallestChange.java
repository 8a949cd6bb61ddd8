package gudgeon.mechanics.cure;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

/** Finds the smallest change of a size, in whole steps, that is enough. */
public final class SmallestChange {
    private SmallestChange() {}

    /**
     * The first of {@code from + step, from + 2 step, ...} up to {@code from + most steps} that is enough, where more of the
     * change never makes it worse; found by halving, so that a wanted size costs some ten trials.
     *
     * @param from the size now
     * @param step the step, positive or negative, such as the 0.1 mm that a machinist can be asked for
     * @param most the greatest number of steps allowed, 1 or more
     * @param enough whether a size is enough
     * @return the size, or empty when even the greatest change is not enough
     */
    public static OptionalDouble find(double from, double step, int most, DoublePredicate enough) {
        if (most < 1 || step == 0) {
            throw new IllegalArgumentException("a change needs one step or more, none of them 0");
        }
        if (!enough.test(from + most * step)) {
            return OptionalDouble.empty();
        }
        int low = 0;
        int high = most;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (enough.test(from + middle * step)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalDouble.of(from + high * step);
    }
}
