package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Curves;
import gudgeon.mechanics.clearance.TopEnd;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The outcome of a trial fit.
 *
 * @param engine the engine's name
 * @param choice the parts tried, every choice resolved
 * @param valveIds ids of the valves, in the order of the top end's valves
 * @param topEnd the top end tried, at the best estimates; with the full profile where the lift's shape is not known
 * @param inputs every size that entered
 * @param findings the gaps found: by valve, then valve to valve, then the deck gap
 * @param figures swept volume, compression ratio, trapped ratio, cranking pressure, metal left
 * @param tightForwardDeg where it goes tight turned forward
 * @param tightBackwardDeg where it goes tight turned backward
 * @param cures what would cure it; empty when all clears
 * @param next the next measurement worth taking; empty when nothing is unproven
 * @param sentence the whole in one sentence
 */
public record TrialFit(
        String engine,
        Choice choice,
        List<String> valveIds,
        TopEnd topEnd,
        List<Input> inputs,
        List<Finding> findings,
        List<Figure> figures,
        OptionalDouble tightForwardDeg,
        OptionalDouble tightBackwardDeg,
        List<CureLine> cures,
        Optional<NextMeasurement> next,
        String sentence) {
    public TrialFit {
        valveIds = List.copyOf(valveIds);
        inputs = List.copyOf(inputs);
        findings = List.copyOf(findings);
        figures = List.copyOf(figures);
        cures = List.copyOf(cures);
    }

    /** The gaps over the crank angle, every {@code stepDeg} degrees, for a plot. */
    public Curves curves(double stepDeg) {
        throw new IllegalStateException("being written: " + stepDeg);
    }
}
