package gudgeon.mechanics.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.crank.Crank;
import java.util.List;

/**
 * One cylinder's top end as it would be built: all that decides the gaps.
 *
 * @param boreDiameterMm diameter of the bore, greater than 0
 * @param crank motion of the piston
 * @param crown the piston's crown, already turned if the piston is
 * @param gasketMm thickness of the head gasket as pressed, 0 or more
 * @param valves any number of valves
 */
public record TopEnd(double boreDiameterMm, Crank crank, Crown crown, double gasketMm, List<Valve> valves) {
    public TopEnd {
        if (!(boreDiameterMm > 0) || !(gasketMm >= 0)) {
            throw new IllegalArgumentException("a bore above 0 mm and a gasket of 0 mm or more are needed, got "
                    + boreDiameterMm + " and " + gasketMm);
        }
        valves = List.copyOf(valves);
    }
}
