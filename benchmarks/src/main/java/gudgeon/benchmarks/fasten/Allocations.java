package gudgeon.benchmarks.fasten;

import gudgeon.benchmarks.Sample;
import gudgeon.rebuild.fasten.Allocation;
import gudgeon.rebuild.fasten.HoleChoice;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.LengthVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;

/**
 * Which fastener goes where, with what is forced and what may be swapped, beside a general-purpose constraint solver that finds
 * one allocation of the same instance and says nothing of the rest.
 */
public final class Allocations {
    private static final int ROUNDS = 21;
    private static final int WARM_UP = 5;
    private static final int HOLES = 500;
    private static final int FASTENERS = 2_000;
    private static final int KINDS = 60;
    private static final String LIMIT = "60s";
    private static final int BUY = 10_000;
    private static final int DOUBTFUL = 10;

    private Allocations() {}

    /** Measures and prints. */
    public static void main(String[] arguments) {
        Heap heap = Heap.random(98, HOLES, FASTENERS, KINDS);
        List<Double> times = new ArrayList<>();
        Allocation found = Allocation.of(heap.joints(), heap.kinds());
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            long begun = System.nanoTime();
            found = Allocation.of(heap.joints(), heap.kinds());
            if (round >= 0) {
                times.add((System.nanoTime() - begun) / 1e6);
            }
        }
        Sample sample = new Sample(times);
        long buy = found.choices().stream().filter(HoleChoice::isToBuy).count();
        long doubtful = found.choices().stream()
                .filter(choice -> choice.verdict() == LengthVerdict.DOUBTFUL)
                .count();
        System.out.printf(
                "allocation: %.1f ms (median of %d), to buy %d, doubtful %d, forced %d%n",
                sample.median(),
                ROUNDS,
                buy,
                doubtful,
                found.choices().stream().filter(HoleChoice::isForced).count());
        solve(heap, sample.median());
    }

    private static void solve(Heap heap, double ours) {
        long begun = System.nanoTime();
        Model model = new Model();
        List<HoleNow> holes = heap.holes();
        IntVar[] at = new IntVar[holes.size()];
        IntVar[] costs = new IntVar[at.length];
        for (int place = 0; place < at.length; place++) {
            int[] row = costs(heap, holes.get(place));
            at[place] = model.intVar(IntStream.range(0, row.length)
                    .filter(kind -> row[kind] >= 0)
                    .toArray());
            costs[place] = model.intVar(0, BUY);
            model.element(
                            costs[place],
                            IntStream.of(row).map(cost -> Math.max(0, cost)).toArray(),
                            at[place],
                            0)
                    .post();
        }
        int[] values = IntStream.range(0, KINDS).toArray();
        IntVar[] used =
                heap.kinds().stream().map(kind -> model.intVar(0, kind.count())).toArray(IntVar[]::new);
        model.globalCardinality(at, values, used, false).post();
        IntVar sum = model.intVar(0, BUY * at.length);
        model.sum(costs, "=", sum).post();
        model.getSolver().limitTime(LIMIT);
        Solution best = model.getSolver().findOptimalSolution(sum, Model.MINIMIZE);
        double time = (System.nanoTime() - begun) / 1e6;
        System.out.printf(
                "general solver: %.0f ms, %s, ratio %.0f%n",
                time,
                Optional.ofNullable(best)
                        .map(one -> "to buy " + one.getIntVal(sum) / BUY + ", doubtful "
                                + one.getIntVal(sum) % BUY / DOUBTFUL
                                + (model.getSolver().isStopCriterionMet()
                                        ? ", best within the limit, not proved"
                                        : ", proved"))
                        .orElse("nothing found within the limit"),
                time / ours);
    }

    /** What each kind costs in a hole, the last for buying; below zero where it can't be. */
    private static int[] costs(Heap heap, HoleNow hole) {
        return IntStream.rangeClosed(0, KINDS)
                .map(kind -> kind == KINDS
                        ? BUY
                        : heap.verdict(hole, heap.kinds().get(kind))
                                .filter(verdict -> !verdict.isDangerous())
                                .map(verdict -> verdict == LengthVerdict.RIGHT ? 0 : DOUBTFUL)
                                .orElse(-1))
                .toArray();
    }
}
