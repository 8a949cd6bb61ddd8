package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;

class AllotmentTest {
    private static final int TRIALS = 400;
    private static final int EMPTY_COST = 10_000;

    @Test
    void isTheBestOfAllAndKnowsWhatElseIsAsGood() {
        Random random = new Random(98);
        for (int trial = 0; trial < TRIALS; trial++) {
            Instance instance = Instance.random(random, 1 + random.nextInt(5), 1 + random.nextInt(4), 3);
            Every every = new Every(instance);
            Allotment found = Allotment.of(instance.cost, instance.counts, instance.empty());
            assertThat(found.cost()).as("trial %d", trial).isEqualTo(every.least);
            assertThat(instance.price(found.kinds())).isEqualTo(found.cost());
            for (int place = 0; place < found.kinds().size(); place++) {
                BitSet all = (BitSet) found.alternatives().get(place).clone();
                int own = found.kinds().get(place);
                all.set(own == Allotment.EMPTY ? instance.counts.length : own);
                assertThat(all).as("trial %d, place %d", trial, place).isEqualTo(every.best.get(place));
            }
        }
    }

    @Test
    void costsWhatAGeneralSolverFinds() {
        Random random = new Random(7);
        for (int trial = 0; trial < 8; trial++) {
            Instance instance = Instance.random(random, 8, 4, 4);
            assertThat(Allotment.of(instance.cost, instance.counts, instance.empty())
                            .cost())
                    .as("trial %d", trial)
                    .isEqualTo(solved(instance));
        }
    }

    private static long solved(Instance instance) {
        int none = instance.counts.length;
        Model model = new Model();
        IntVar[] at = new IntVar[instance.cost.length];
        IntVar[] costs = new IntVar[at.length];
        for (int place = 0; place < at.length; place++) {
            int[] row = instance.cost[place];
            int[] fit = IntStream.rangeClosed(0, none)
                    .filter(kind -> kind == none || row[kind] != Allotment.UNFIT)
                    .toArray();
            at[place] = model.intVar(fit);
            costs[place] = model.intVar(0, 100_000);
            model.element(
                            costs[place],
                            IntStream.rangeClosed(0, none)
                                    .map(kind ->
                                            kind == none ? EMPTY_COST : row[kind] == Allotment.UNFIT ? 0 : row[kind])
                                    .toArray(),
                            at[place],
                            0)
                    .post();
        }
        for (int kind = 0; kind < none; kind++) {
            model.count(kind, at, model.intVar(0, instance.counts[kind])).post();
        }
        IntVar sum = model.intVar(0, 10_000_000);
        model.sum(costs, "=", sum).post();
        Solution best = model.getSolver().findOptimalSolution(sum, Model.MINIMIZE);
        return best.getIntVal(sum);
    }

    /** Costs and counts. */
    private static final class Instance {
        private final int[][] cost;
        private final int[] counts;

        Instance(int[][] cost, int[] counts) {
            this.cost = cost;
            this.counts = counts;
        }

        int[] empty() {
            int[] empty = new int[cost.length];
            Arrays.fill(empty, EMPTY_COST);
            return empty;
        }

        static Instance random(Random random, int places, int kinds, int dearest) {
            int[][] cost = new int[places][kinds];
            for (int[] row : cost) {
                for (int kind = 0; kind < kinds; kind++) {
                    row[kind] = random.nextInt(3) == 0 ? Allotment.UNFIT : random.nextInt(dearest);
                }
            }
            return new Instance(cost, random.ints(kinds, 0, 4).toArray());
        }

        long price(List<Integer> kinds) {
            int[] used = new int[counts.length];
            long sum = 0;
            for (int place = 0; place < cost.length; place++) {
                int kind = kinds.get(place);
                sum += kind == Allotment.EMPTY ? EMPTY_COST : cost[place][kind];
                if (kind != Allotment.EMPTY) {
                    assertThat(cost[place][kind]).isNotEqualTo(Allotment.UNFIT);
                    assertThat(++used[kind]).isLessThanOrEqualTo(counts[kind]);
                }
            }
            return sum;
        }
    }

    /** Every allotment there is. */
    private static final class Every {
        private final Instance instance;
        private long least = Long.MAX_VALUE;
        private List<BitSet> best = List.of();

        Every(Instance instance) {
            this.instance = instance;
            search(new ArrayList<>(), instance.counts.clone(), 0);
        }

        private void search(List<Integer> kinds, int[] left, long sum) {
            if (kinds.size() == instance.cost.length) {
                keep(kinds, sum);
                return;
            }
            int none = left.length;
            for (int kind = 0; kind <= none; kind++) {
                int one = kind == none ? EMPTY_COST : instance.cost[kinds.size()][kind];
                if (one != Allotment.UNFIT && (kind == none || left[kind] > 0)) {
                    int[] after = left.clone();
                    if (kind < none) {
                        after[kind]--;
                    }
                    List<Integer> longer = new ArrayList<>(kinds);
                    longer.add(kind);
                    search(longer, after, sum + one);
                }
            }
        }

        private void keep(List<Integer> kinds, long sum) {
            if (sum < least) {
                least = sum;
                best = kinds.stream().map(kind -> new BitSet()).toList();
            }
            if (sum == least) {
                for (int place = 0; place < kinds.size(); place++) {
                    best.get(place).set(kinds.get(place));
                }
            }
        }
    }
}
