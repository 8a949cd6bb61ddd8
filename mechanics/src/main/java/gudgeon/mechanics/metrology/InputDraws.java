package gudgeon.mechanics.metrology;

import java.util.List;
import java.util.random.RandomGenerator;

/** Draws the inputs of a model: each one's best estimate plus a deviate for every doubt it carries. Not thread-safe. */
final class InputDraws {
    private final double[] estimates;
    private final double[] drawn;
    private final int[] input;
    private final Distribution[] distribution;
    private final double[] scale;

    InputDraws(List<Quantity> inputs) {
        estimates = inputs.stream().mapToDouble(Quantity::value).toArray();
        drawn = estimates.clone();
        int doubts =
                inputs.stream().mapToInt(quantity -> quantity.doubts().size()).sum();
        input = new int[doubts];
        distribution = new Distribution[doubts];
        scale = new double[doubts];
        int k = 0;
        for (int i = 0; i < inputs.size(); i++) {
            for (Doubt doubt : inputs.get(i).doubts()) {
                input[k] = i;
                distribution[k] = doubt.distribution();
                scale[k] = doubt.standardUncertainty() * halfWidth(doubt.distribution());
                k++;
            }
        }
    }

    /** The next inputs drawn; the same array each time. */
    double[] next(RandomGenerator random) {
        System.arraycopy(estimates, 0, drawn, 0, drawn.length);
        for (int k = 0; k < input.length; k++) {
            drawn[input[k]] += scale[k] * deviate(distribution[k], random);
        }
        return drawn;
    }

    /** Half the width of a bounded distribution of standard deviation 1 (JCGM 100:2008, 4.3.7 and 4.3.9). */
    private static double halfWidth(Distribution distribution) {
        return switch (distribution) {
            case NORMAL -> 1;
            case RECTANGULAR -> Math.sqrt(3);
            case TRIANGULAR -> Math.sqrt(6);
        };
    }

    /** A deviate about 0: of standard deviation 1 if normal, else within -1 and 1 (JCGM 101:2008, 6.4). */
    private static double deviate(Distribution distribution, RandomGenerator random) {
        return switch (distribution) {
            case NORMAL -> random.nextGaussian();
            case RECTANGULAR -> 2 * random.nextDouble() - 1;
            case TRIANGULAR -> random.nextDouble() + random.nextDouble() - 1;
        };
    }
}
