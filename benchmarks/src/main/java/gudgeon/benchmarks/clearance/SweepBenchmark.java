package gudgeon.benchmarks.clearance;

import gudgeon.mechanics.clearance.CrownGap;
import gudgeon.mechanics.clearance.Follower;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.Sweep;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;
import gudgeon.mechanics.metrology.MonteCarlo;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One sweep with all gaps, one least gap, and many draws of it, beside {@link DenseScript}. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SweepBenchmark {
    /** A thread's own sweep and the top end it looks at. */
    @State(Scope.Thread)
    public static class OneSweep {
        final TopEnd topEnd = Problem.known();
        final Sweep sweep = new Sweep();
        final Follower follower = new Follower(topEnd, 0, CrownGap.BORE, 0.3);
    }

    /** Top ends with more and more valves. */
    @State(Scope.Thread)
    public static class ManyValves {
        @Param({"1", "2", "4", "8"})
        int valves;

        final Sweep sweep = new Sweep();
    }

    /** More and more draws. */
    @State(Scope.Thread)
    public static class ManyDraws {
        @Param({"100000", "1000000"})
        int draws;
    }

    @Benchmark
    public Gaps allGapsOfTwoValves(OneSweep one) {
        return one.sweep.gaps(one.topEnd);
    }

    @Benchmark
    public double leastBoreGapSwept(OneSweep one) {
        return one.sweep.leastBoreGapMm(one.topEnd, 0);
    }

    @Benchmark
    public double leastBoreGapFollowed(OneSweep one) {
        return one.follower.leastMm(one.topEnd);
    }

    @Benchmark
    public double boreGapsOfTwoValvesByDenseScript(OneSweep one) {
        double least = Double.POSITIVE_INFINITY;
        for (Valve valve : one.topEnd.valves()) {
            least = Math.min(least, DenseScript.leastBoreGap(one.topEnd, valve));
        }
        return least;
    }

    @Benchmark
    public double[] allGapsOfTwoValvesByDenseScript(OneSweep one) {
        return DenseScript.leastGaps(one.topEnd);
    }

    @Benchmark
    public Gaps allGapsByValves(ManyValves many) {
        return many.sweep.gaps(Problem.withValves(many.valves));
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 3)
    public double leastBoreGapOfManyDraws(ManyDraws many) {
        return new MonteCarlo(1, Runtime.getRuntime().availableProcessors())
                .run(
                        Problem.inputs(),
                        () -> {
                            Follower follower = new Follower(Problem.known(), 0, CrownGap.BORE, 0.3);
                            return x -> follower.leastMm(Problem.topEnd(x));
                        },
                        many.draws)
                .standardUncertainty();
    }
}
