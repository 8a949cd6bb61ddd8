package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The work that a check which comes late puts at stake. If a suspect is wrong, and a check finds it, every step in the way to it that
 * was done before the check is undone and done again. A suspect that several checks clear is found by each with the same chance.
 */
final class Burying {
    /** Work of a step whose minutes the book does not say; common practice, no source. */
    static final int MINUTES_NOT_SAID = 10;

    /** Taking off is taken as half of putting on; common practice, no source. */
    private static final double OFF_AND_ON = 1.5;

    /**
     * A suspect of a check.
     *
     * @param position the position
     * @param chance that it is wrong and this check is the one that finds it
     * @param covering the steps that stand in the way to it
     */
    record Suspect(String position, double chance, List<Step> covering) {}

    private final Map<String, List<Suspect>> suspects = new LinkedHashMap<>();

    /**
     * @param chances of a position's part to be wrong, from 0 to 1
     */
    Burying(Structure structure, ToDoubleFunction<String> chances) {
        Map<String, Set<String>> cleared = new LinkedHashMap<>();
        Map<String, Integer> clearing = new HashMap<>();
        for (Check check : structure.checks()) {
            Set<String> positions = structure.cleared(check);
            positions.removeIf(position -> structure.position(position).isEmpty());
            positions.forEach(position -> clearing.merge(position, 1, Integer::sum));
            cleared.put(check.id(), positions);
        }
        Map<String, List<Step>> covering = new HashMap<>();
        cleared.forEach((check, positions) -> {
            List<Suspect> of = new ArrayList<>();
            for (String position : positions) {
                List<Step> steps = covering.computeIfAbsent(position, p -> inTheWay(structure, p));
                double chance = chances.applyAsDouble(position) / clearing.getOrDefault(position, 1);
                of.add(new Suspect(position, chance, steps));
            }
            suspects.put(check, of);
        });
    }

    private static List<Step> inTheWay(Structure structure, String position) {
        return structure.allCovering(position).stream()
                .filter(step -> !step.fits().contains(position))
                .toList();
    }

    /** The suspects of a check. */
    List<Suspect> suspects(String check) {
        return suspects.getOrDefault(check, List.of());
    }

    /** What each step costs, in expected minutes, if it is done before a check. */
    Map<String, Double> costs(String check) {
        Map<String, Double> costs = new LinkedHashMap<>();
        for (Suspect suspect : suspects(check)) {
            suspect.covering().forEach(step -> costs.merge(step.id(), suspect.chance() * offAndOn(step), Double::sum));
        }
        costs.values().removeIf(cost -> cost <= 0);
        return costs;
    }

    /** Minutes of undoing a step and doing it again. */
    static double offAndOn(Step step) {
        return OFF_AND_ON * (step.minutes() == 0 ? MINUTES_NOT_SAID : step.minutes());
    }

    /** What an order costs: expected minutes of work undone and done again. */
    double cost(List<String> order) {
        double cost = 0;
        Set<String> done = new LinkedHashSet<>();
        for (String node : order) {
            for (Map.Entry<String, Double> each : costs(node).entrySet()) {
                cost += done.contains(each.getKey()) ? each.getValue() : 0;
            }
            done.add(node);
        }
        return cost;
    }
}
