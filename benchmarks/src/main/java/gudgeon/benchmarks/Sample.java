package gudgeon.benchmarks;

import java.util.Arrays;
import java.util.List;

/**
 * What was measured of one thing, again and again.
 *
 * @param sorted the values, the least first; at least one
 */
public record Sample(List<Double> sorted) {
    /** A sample of values in any order. */
    public Sample {
        double[] values = sorted.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(values);
        sorted = Arrays.stream(values).boxed().toList();
    }

    /** The value that half of them do not pass. */
    public double median() {
        return quantile(0.5);
    }

    /**
     * The value that a share of them does not pass, by the nearest rank.
     *
     * @param share over 0, up to 1
     */
    public double quantile(double share) {
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }
}
