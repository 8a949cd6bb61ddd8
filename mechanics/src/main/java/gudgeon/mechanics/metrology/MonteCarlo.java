package gudgeon.mechanics.metrology;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * Monte Carlo propagation of distributions through a model (JCGM 101:2008, clause 7).
 *
 * <p>Every input is drawn as its best estimate plus a deviate from the distribution of each of its doubts. Draws come in
 * blocks of {@value #BLOCK}, each with a generator of its own whose seed follows from the run's seed and the block's
 * number alone, and blocks are added up in their order: the same seed gives the same bits on any number of threads.
 *
 * <p>The model is made once for each thread, so it may keep scratch; it is given the same array for every draw, which it
 * must not keep or change.
 *
 * @param seed the seed; a different one gives other draws of the same distributions
 * @param threads how many threads work, 1 or more
 */
public record MonteCarlo(long seed, int threads) {
    /** Draws in a block: the least that JCGM 101:2008, 7.9.4 b) allows for a coverage probability of 95 %. */
    static final int BLOCK = 10_000;

    /** Fewest draws of a run: below this the ends of a 95 % interval would rest on one or two draws. */
    private static final int FEWEST = 100;

    private static final int DIGITS = 2;

    public MonteCarlo {
        if (threads < 1) {
            throw new IllegalArgumentException("one thread or more is needed, got " + threads);
        }
    }

    /**
     * A run of a fixed number of draws.
     *
     * @param inputs the inputs, independent of each other
     * @param model makes the figure's model for one thread
     * @param draws 100 or more; needs 8 bytes of memory each
     * @throws IllegalArgumentException if there are too few draws
     * @throws ArithmeticException if the model gives no finite number for a draw
     */
    public Propagation run(List<Quantity> inputs, Supplier<? extends ToDoubleFunction<double[]>> model, int draws) {
        require(draws, FEWEST);
        Blocks blocks = new Blocks(seed, threads, inputs, model, draws);
        blocks.fill(0, blocks.count());
        Moments all = Moments.NONE;
        for (int block = 0; block < blocks.count(); block++) {
            all = all.and(blocks.moments(block));
        }
        return new Propagation(blocks.ascending(blocks.count()), all, false);
    }

    /**
     * A run that stops as soon as the mean, the standard uncertainty and both ends of the 95 % interval are stable to
     * two significant digits of the standard uncertainty, or at the greatest number of draws (JCGM 101:2008, 7.9.4). A
     * figure that no draw changes is stable after two blocks.
     *
     * @param inputs the inputs, independent of each other
     * @param model makes the figure's model for one thread
     * @param greatestDraws when to stop unsettled, two blocks of {@value #BLOCK} or more, rounded down to whole blocks;
     *     needs 8 bytes of memory each
     * @throws IllegalArgumentException if there are too few draws
     * @throws ArithmeticException if the model gives no finite number for a draw
     */
    public Propagation untilStable(
            List<Quantity> inputs, Supplier<? extends ToDoubleFunction<double[]>> model, int greatestDraws) {
        require(greatestDraws, 2 * BLOCK);
        Blocks blocks = new Blocks(seed, threads, inputs, model, greatestDraws / BLOCK * BLOCK);
        Steadiness steadiness = new Steadiness();
        int used = 0;
        int filled = 0;
        while (used < blocks.count() && !steadiness.reached()) {
            if (used == filled) {
                // blocks filled beyond the one that settles it are left out, so threads do not change the answer
                filled = Math.min(filled + Math.max(threads, 2), blocks.count());
                blocks.fill(used, filled);
            }
            steadiness.add(blocks.moments(used), blocks.interval(used));
            used++;
        }
        return new Propagation(blocks.ascending(used), steadiness.all, steadiness.reached());
    }

    private static void require(int draws, int fewest) {
        if (draws < fewest) {
            throw new IllegalArgumentException("at least " + fewest + " draws are needed, got " + draws);
        }
    }

    /** The running averages of JCGM 101:2008, 7.9.4 d) to i). */
    private static final class Steadiness {
        private Moments all = Moments.NONE;
        private final Moments[] averages = new Moments[4];

        Steadiness() {
            Arrays.fill(averages, Moments.NONE);
        }

        void add(Moments block, Propagation.Interval interval) {
            all = all.and(block);
            double[] results = {block.mean(), block.standardDeviation(), interval.low(), interval.high()};
            for (int i = 0; i < results.length; i++) {
                averages[i] = averages[i].and(Moments.of(results[i]));
            }
        }

        boolean reached() {
            if (averages[0].count() < 2) {
                return false;
            }
            double tolerance = Propagation.tolerance(all.standardDeviation(), DIGITS);
            return Arrays.stream(averages).allMatch(a -> 2 * a.standardDeviationOfMean() <= tolerance);
        }
    }
}
