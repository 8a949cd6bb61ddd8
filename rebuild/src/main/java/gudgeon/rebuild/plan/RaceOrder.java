package gudgeon.rebuild.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An order of checks that costs little: rivals in the order that costs least at each choice, then improved piece by piece with a
 * solver for as long as time is left.
 *
 * @param order the checks
 * @param cost what the order costs
 * @param bound what no order costs less than
 * @param proven whether none costs less
 */
record RaceOrder(List<Integer> order, double cost, double bound, boolean proven) {
    /** Rivals that are put in order as a whole; of more, as many at a time. */
    private static final int AT_A_TIME = 12;

    private static final double EXACT = 1e-9;

    /**
     * @param deadline by the system's nanosecond clock
     */
    static RaceOrder of(CheckRace race, long deadline) {
        List<Integer> order = new ArrayList<>();
        double cost = race.forced();
        double bound = race.forced();
        boolean proven = true;
        for (List<Integer> rivals : Rivals.of(race)) {
            BitSet done = race.calledBy(order);
            RaceOrder part = rivals.size() == 1 ? alone(race, rivals, done) : ordered(race, rivals, done, deadline);
            order.addAll(part.order);
            cost += part.cost;
            bound += part.bound;
            proven &= part.proven;
        }
        return new RaceOrder(order, cost, proven ? cost : bound, proven);
    }

    private static RaceOrder alone(CheckRace race, List<Integer> check, BitSet done) {
        double cost = race.cost(check, done);
        return new RaceOrder(check, cost, cost, true);
    }

    private static RaceOrder ordered(CheckRace race, List<Integer> rivals, BitSet done, long deadline) {
        List<Integer> order = greedy(race, rivals, done);
        double bound = new RaceBound(race, rivals, done).best(deadline);
        boolean whole = false;
        if (race.cost(order, done) > bound + EXACT) {
            if (order.size() <= AT_A_TIME) {
                Piece piece = new Piece(race, order, done);
                order = piece.best(deadline);
                whole = piece.isProven();
            } else {
                order = byPieces(race, order, done, deadline);
            }
        }
        double cost = race.cost(order, done);
        boolean proven = whole || cost <= bound + EXACT;
        return new RaceOrder(order, cost, proven ? cost : bound, proven);
    }

    /** Next comes the check whose steps cost the checks that are left least. */
    private static List<Integer> greedy(CheckRace race, List<Integer> rivals, BitSet done) {
        Set<Integer> left = new LinkedHashSet<>(rivals);
        BitSet steps = (BitSet) done.clone();
        Map<Integer, Double> atStake = new HashMap<>();
        rivals.forEach(
                check -> race.stakes(check).forEach(stake -> atStake.merge(stake.step(), stake.cost(), Double::sum)));
        List<Integer> order = new ArrayList<>();
        while (!left.isEmpty()) {
            int next = cheapest(race, left, steps, atStake).orElseThrow();
            left.remove(next);
            order.add(next);
            steps.or(race.calls(next));
            race.stakes(next).forEach(stake -> atStake.merge(stake.step(), -stake.cost(), Double::sum));
        }
        return order;
    }

    private static Optional<Integer> cheapest(
            CheckRace race, Set<Integer> left, BitSet done, Map<Integer, Double> atStake) {
        double least = Double.POSITIVE_INFINITY;
        Optional<Integer> cheapest = Optional.empty();
        for (int check : left) {
            if (race.isFree(check, left)) {
                BitSet more = (BitSet) race.calls(check).clone();
                more.andNot(done);
                double cost = more.stream()
                        .mapToDouble(step -> atStake.getOrDefault(step, 0.0))
                        .sum();
                if (cost < least - EXACT) {
                    least = cost;
                    cheapest = Optional.of(check);
                }
            }
        }
        return cheapest;
    }

    /** Puts piece after piece in its best order, half a piece further each time, until nothing changes or time is up. */
    private static List<Integer> byPieces(CheckRace race, List<Integer> start, BitSet done, long deadline) {
        List<Integer> order = new ArrayList<>(start);
        boolean better = true;
        while (better) {
            better = false;
            for (int from = 0; from + AT_A_TIME / 2 < order.size(); from += AT_A_TIME / 2) {
                if (System.nanoTime() > deadline) {
                    return order;
                }
                List<Integer> piece = order.subList(from, Math.min(order.size(), from + AT_A_TIME));
                BitSet before = race.calledBy(order.subList(0, from));
                before.or(done);
                List<Integer> best = new Piece(race, List.copyOf(piece), before).best(deadline);
                if (race.cost(best, before) < race.cost(piece, before) - EXACT) {
                    better = true;
                    for (int i = 0; i < best.size(); i++) {
                        piece.set(i, best.get(i));
                    }
                }
            }
        }
        return order;
    }
}
