package gudgeon.rebuild.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.SearchState;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A few checks in a row, put in their best order by a constraint solver: each has a place, of each two one comes first, and a check
 * pays for a step if any check that calls for it comes before. The solver counts in whole numbers, some millionths of the cost.
 */
final class Piece {
    private static final int MOST = 100_000_000;
    private static final double NOTHING = 1e-9;

    private final CheckRace race;
    private final List<Integer> checks;
    private final BitSet done;
    private final double known;
    private final double bound;
    private final Model model = new Model();
    private final List<BoolVar> paid = new ArrayList<>();
    private final List<Double> prices = new ArrayList<>();
    private boolean proven;

    /**
     * @param checks in the order that is known so far
     * @param done steps that are done before the first of them
     */
    Piece(CheckRace race, List<Integer> checks, BitSet done) {
        this.race = race;
        this.checks = checks;
        this.done = done;
        this.known = race.cost(checks, done);
        this.bound = new RaceBound(race, checks, done).quick();
    }

    /** Whether {@link #best} found that no order costs less. */
    boolean isProven() {
        return proven;
    }

    /**
     * The best order found; the known one if none is better.
     *
     * @param deadline by the system's nanosecond clock
     */
    List<Integer> best(long deadline) {
        proven = known <= bound + NOTHING;
        long left = TimeUnit.NANOSECONDS.toMillis(deadline - System.nanoTime());
        if (proven || left <= 0) {
            return checks;
        }
        IntVar[] at = model.intVarArray("at", checks.size(), 0, checks.size() - 1);
        IntVar[] places = model.intVarArray("place", checks.size(), 0, checks.size() - 1);
        model.inverseChanneling(at, places).post();
        pay(firsts(places));
        model.setObjective(Model.MINIMIZE, cost());
        Solver solver = model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(at));
        solver.limitTime(left);
        List<Integer> best = checks;
        while (solver.solve()) {
            List<Integer> found = new ArrayList<>();
            for (IntVar check : at) {
                found.add(checks.get(check.getValue()));
            }
            best = race.cost(found, done) < race.cost(best, done) ? found : best;
        }
        proven = solver.getSearchState() == SearchState.TERMINATED;
        return best;
    }

    private BoolVar[][] firsts(IntVar... places) {
        int n = checks.size();
        BoolVar[][] first = new BoolVar[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                first[i][j] = model.arithm(places[i], "<", places[j]).reify();
                first[j][i] = model.boolNotView(first[i][j]);
                if (race.first(checks.get(j)).get(checks.get(i))) {
                    model.arithm(places[i], "<", places[j]).post();
                } else if (race.first(checks.get(i)).get(checks.get(j))) {
                    model.arithm(places[j], "<", places[i]).post();
                }
            }
        }
        return first;
    }

    private void pay(BoolVar[]... first) {
        for (int j = 0; j < checks.size(); j++) {
            int late = j;
            stakes(j).entrySet().stream()
                    .sorted(Comparator.comparing(entry -> entry.getKey().toString()))
                    .forEach(entry -> {
                        paid.add(anyOf(entry.getKey().stream()
                                .mapToObj(i -> first[i][late])
                                .toArray(BoolVar[]::new)));
                        prices.add(entry.getValue());
                    });
        }
    }

    /** What a check pays, by the others of which any must come before it for that. */
    private Map<BitSet, Double> stakes(int check) {
        Map<BitSet, Double> stakes = new HashMap<>();
        for (CheckRace.Stake stake : race.stakes(checks.get(check))) {
            BitSet callers = new BitSet();
            for (int i = 0; i < checks.size(); i++) {
                callers.set(i, i != check && race.calls(checks.get(i)).get(stake.step()));
            }
            if (!done.get(stake.step()) && !callers.isEmpty()) {
                stakes.merge(callers, stake.cost(), Double::sum);
            }
        }
        return stakes;
    }

    private BoolVar anyOf(BoolVar... vars) {
        if (vars.length == 1) {
            return vars[0];
        }
        BoolVar any = model.boolVar();
        model.max(any, vars).post();
        return any;
    }

    /** The cost, between the bound and what is known, without what was done before the first check. */
    private IntVar cost() {
        double fixed = checks.stream()
                .flatMap(check -> race.stakes(check).stream())
                .filter(stake -> done.get(stake.step()))
                .mapToDouble(CheckRace.Stake::cost)
                .sum();
        double scale = MOST / prices.stream().mapToDouble(price -> price).sum();
        int[] rounded = prices.stream().mapToInt(price -> (int) (price * scale)).toArray();
        int least = (int) Math.max(0, (bound - fixed) * scale - rounded.length);
        IntVar cost = model.intVar("cost", least, (int) Math.ceil((known - fixed) * scale), true);
        model.scalar(paid.toArray(BoolVar[]::new), rounded, "=", cost).post();
        return cost;
    }
}
