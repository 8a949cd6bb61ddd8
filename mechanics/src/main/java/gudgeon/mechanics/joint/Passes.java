package gudgeon.mechanics.joint;

import java.util.List;
import java.util.stream.IntStream;

/**
 * In which steps a joint is brought up to its torque. Three passes are the 20 to 30 %, 50 to 70 % and 100 % of ASME PCC-1, table 2
 * (from memory); any other number is spaced evenly.
 */
public final class Passes {
    /** More than anyone does. */
    public static final int MOST = 20;

    private Passes() {}

    /**
     * The share of the full torque at each pass, from above 0 to 1.
     *
     * @param passes how many, 1 to {@link #MOST}
     * @throws IllegalArgumentException for any other number
     */
    public static List<Double> shares(int passes) {
        if (passes < 1 || passes > MOST) {
            throw new IllegalArgumentException("a joint is tightened in 1 to " + MOST + " passes, got " + passes);
        }
        return passes == 3
                ? List.of(0.3, 0.7, 1.0)
                : IntStream.rangeClosed(1, passes)
                        .mapToObj(pass -> (double) pass / passes)
                        .toList();
    }
}
