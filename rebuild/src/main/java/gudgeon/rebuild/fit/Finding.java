package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What is found of one gap.
 *
 * @param kind which gap
 * @param valves ids of the valves it belongs to: one, two for valve to valve, none for the deck gap
 * @param gap the gap over the cycle; where the lift's shape is not known, that of the full profile
 * @param leanLeastMm the least value with the lean profile, where the lift's shape is not known
 * @param standardUncertaintyMm standard uncertainty of the least value
 * @param wantedMm the least gap wanted
 * @param wantedSource who wants it: the maker's figure or common practice
 * @param verdict the verdict
 * @param sentence the verdict as a person reads it
 * @param budget shares of the doubt, largest first
 * @param working how the figure was worked out
 */
public record Finding(
        GapKind kind,
        List<String> valves,
        Gap gap,
        Optional<Double> leanLeastMm,
        double standardUncertaintyMm,
        double wantedMm,
        String wantedSource,
        Verdict verdict,
        String sentence,
        List<Share> budget,
        Working working) {
    /** The coverage factor of expanded uncertainties: 2, about 95 % for a normal distribution (JCGM 100:2008, 6.3.3). */
    public static final double COVERAGE = 2;

    public Finding {
        valves = List.copyOf(valves);
        budget = List.copyOf(budget);
    }
}
