package gudgeon.rebuild.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of checks as a problem of numbers. Steps are never done before a check calls for them, so the order in which checks come
 * decides which steps are done before which check: all that any check up to it must have before it. A check costs what each step
 * done before it puts at stake; what its own steps put at stake can't be saved.
 */
final class CheckRace {
    /**
     * What a step costs if it is done before a check.
     *
     * @param step its index
     * @param cost expected minutes, more than 0
     */
    record Stake(int step, double cost) {}

    private final List<BitSet> calls = new ArrayList<>();
    private final List<BitSet> first = new ArrayList<>();
    private final List<List<Stake>> stakes = new ArrayList<>();
    private final Map<String, Integer> stepIndex = new HashMap<>();
    private double forced;

    /** Adds a check; all checks that must come before it may come later in the book, so they are named by index. */
    void add(Collection<String> stepsBefore, BitSet checksBefore, Map<String, Double> costs) {
        BitSet called = new BitSet();
        stepsBefore.forEach(step -> called.set(index(step)));
        List<Stake> at = new ArrayList<>();
        costs.forEach((step, cost) -> {
            if (called.get(index(step))) {
                forced += cost;
            } else {
                at.add(new Stake(index(step), cost));
            }
        });
        calls.add(called);
        first.add(checksBefore);
        stakes.add(at);
    }

    private int index(String step) {
        return stepIndex.computeIfAbsent(step, id -> stepIndex.size());
    }

    int size() {
        return calls.size();
    }

    /** What no order can save. */
    double forced() {
        return forced;
    }

    /** The steps that a check calls for. */
    BitSet calls(int check) {
        return calls.get(check);
    }

    /** The checks that must come before a check. */
    BitSet first(int check) {
        return first.get(check);
    }

    /** What is at stake at a check, without the steps it calls for itself. */
    List<Stake> stakes(int check) {
        return stakes.get(check);
    }

    /** What checks in this order cost above what is forced, after steps that are done already. */
    double cost(List<Integer> order, BitSet done) {
        double cost = 0;
        BitSet steps = (BitSet) done.clone();
        for (int check : order) {
            steps.or(calls(check));
            for (Stake stake : stakes(check)) {
                cost += steps.get(stake.step()) ? stake.cost() : 0;
            }
        }
        return cost;
    }

    /** All the steps that some checks call for. */
    BitSet calledBy(Collection<Integer> checks) {
        BitSet steps = new BitSet();
        checks.forEach(check -> steps.or(calls(check)));
        return steps;
    }

    /** Checks that want to come before others, so that these don't cost them, or must: the first index wants to be first. */
    List<BitSet> wantedFirst() {
        List<BitSet> wanted = new ArrayList<>();
        Map<Integer, BitSet> hurtBy = new HashMap<>();
        for (int j = 0; j < size(); j++) {
            wanted.add(new BitSet());
            for (Stake stake : stakes(j)) {
                hurtBy.computeIfAbsent(stake.step(), step -> new BitSet()).set(j);
            }
        }
        for (int i = 0; i < size(); i++) {
            int later = i;
            calls(i).stream()
                    .mapToObj(step -> hurtBy.getOrDefault(step, new BitSet()))
                    .flatMap(hurt -> hurt.stream().boxed())
                    .filter(hurt -> hurt != later)
                    .forEach(hurt -> wanted.get(hurt).set(later));
            first(i).stream().forEach(before -> wanted.get(before).set(later));
        }
        return wanted;
    }

    /** Whether all of a check's forerunners among some checks are placed. */
    boolean isFree(int check, Set<Integer> unplaced) {
        return first(check).stream().noneMatch(unplaced::contains);
    }
}
