package gudgeon.mechanics.clearance;

import java.util.List;
import java.util.OptionalDouble;

/**
 * All gaps of a top end over one cycle.
 *
 * @param valves the gaps of each valve, in the order of {@link TopEnd#valves()}
 * @param valveToValve the gap of each pair of valves
 * @param deck crown's flat to the head's flat at top dead centre
 * @param tightForwardDeg where the engine goes tight when turned forward from bottom dead centre at 180 degrees; empty when
 *     nothing touches
 * @param tightBackwardDeg the same, turned backward
 */
public record Gaps(
        List<ValveGaps> valves,
        List<PairGap> valveToValve,
        Gap deck,
        OptionalDouble tightForwardDeg,
        OptionalDouble tightBackwardDeg) {
    public Gaps {
        valves = List.copyOf(valves);
        valveToValve = List.copyOf(valveToValve);
    }
}
