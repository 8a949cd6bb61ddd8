package gudgeon.mechanics.metrology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** The draws of a run in blocks, each filled by whichever thread is free, and each the same whoever fills it. */
final class Blocks {
    private static final int SIZE = MonteCarlo.BLOCK;

    /** 2^64 divided by the golden ratio, odd: the step of the SplitMix64 sequence. */
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;

    private final long seed;
    private final double[] draws;
    private final Moments[] moments;
    private final List<Worker> workers = new ArrayList<>();
    private final RandomGeneratorFactory<RandomGenerator> generators = RandomGeneratorFactory.of("L64X128MixRandom");

    Blocks(
            long seed,
            int threads,
            List<Quantity> inputs,
            Supplier<? extends ToDoubleFunction<double[]>> model,
            int draws) {
        this.seed = seed;
        this.draws = new double[draws];
        this.moments = new Moments[(draws + SIZE - 1) / SIZE];
        Arrays.fill(moments, Moments.NONE);
        for (int thread = 0; thread < Math.min(threads, moments.length); thread++) {
            workers.add(new Worker(new InputDraws(inputs), model.get()));
        }
    }

    int count() {
        return moments.length;
    }

    Moments moments(int block) {
        return moments[block];
    }

    Propagation.Interval interval(int block) {
        return Propagation.interval(draws, from(block), from(block + 1), Propagation.COVERAGE_PROBABILITY);
    }

    /** The draws of the first blocks, in order; a filled block is a run in order already. */
    double[] ascending(int blocks) {
        double[] all = Arrays.copyOf(draws, from(blocks));
        Arrays.sort(all);
        return all;
    }

    /** Fills the blocks in {@code [first, end)}. */
    void fill(int first, int end) {
        AtomicInteger next = new AtomicInteger(first);
        if (workers.size() == 1) {
            workers.get(0).fill(next, end);
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(workers.size());
        try {
            List<Future<?>> running = new ArrayList<>();
            for (Worker worker : workers) {
                running.add(pool.submit(() -> worker.fill(next, end)));
            }
            for (Future<?> future : running) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw (CancellationException) new CancellationException("the draws were interrupted").initCause(e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } finally {
            next.set(end);
            pool.shutdownNow();
        }
    }

    private int from(int block) {
        return Math.min(block * SIZE, draws.length);
    }

    /** The block's own generator, seeded with the block's number-th output of SplitMix64. */
    private RandomGenerator generator(int block) {
        long z = seed + GOLDEN * (block + 1);
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return generators.create(z ^ (z >>> 31));
    }

    /** What one thread needs of its own. */
    private final class Worker {
        private final InputDraws inputs;
        private final ToDoubleFunction<double[]> model;

        Worker(InputDraws inputs, ToDoubleFunction<double[]> model) {
            this.inputs = inputs;
            this.model = model;
        }

        void fill(AtomicInteger next, int end) {
            for (int block = next.getAndIncrement(); block < end; block = next.getAndIncrement()) {
                fill(block);
            }
        }

        private void fill(int block) {
            RandomGenerator random = generator(block);
            int to = from(block + 1);
            for (int i = from(block); i < to; i++) {
                double figure = model.applyAsDouble(inputs.next(random));
                if (!Double.isFinite(figure)) {
                    throw new ArithmeticException("the model gave " + figure + " at draw " + i);
                }
                draws[i] = figure;
            }
            Arrays.sort(draws, from(block), to);
            moments[block] = Moments.of(draws, from(block), to);
        }
    }
}
