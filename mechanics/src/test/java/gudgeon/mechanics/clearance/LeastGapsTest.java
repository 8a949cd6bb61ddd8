package gudgeon.mechanics.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.crank.Crank;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What only follows, or only works out again what has moved, must say what a whole sweep says. */
class LeastGapsTest {
    private static final double TOLERANCE = 0.004;

    private static double[] swept(TopEnd topEnd) {
        Gaps gaps = new Sweep().gaps(topEnd);
        List<Double> all = new ArrayList<>();
        for (ValveGaps valve : gaps.valves()) {
            all.add(valve.bore().leastMm());
            all.add(valve.valve().leastMm());
            all.add(valve.nearest().leastMm());
            all.add(valve.side().map(Gap::leastMm).orElse(Double.POSITIVE_INFINITY));
            all.add(valve.wall().leastMm());
        }
        gaps.valveToValve().forEach(pair -> all.add(pair.gap().leastMm()));
        all.add(gaps.deck().leastMm());
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void assertSame(LeastGaps least, TopEnd moved) {
        double[] expected = swept(moved);
        double[] found = least.of(moved);
        assertThat(found).hasSameSizeAs(expected);
        for (int i = 0; i < found.length; i++) {
            if (Double.isFinite(expected[i])) {
                assertThat(found[i]).as("gap " + i).isCloseTo(expected[i], within(TOLERANCE));
            }
        }
    }

    @Test
    void whateverMovesTheFollowedGapsAreThoseOfASweep() {
        TopEnd known = Examples.leaningPair(3.5);
        LeastGaps least = new LeastGaps(known, 0.4);
        assertSame(least, known);
        assertSame(least, new TopEnd(50, known.crank(), known.crown(), 1.03, known.valves()));
        assertSame(least, new TopEnd(50.02, known.crank(), known.crown(), 1, known.valves()));
        assertSame(least, new TopEnd(50, new Crank(25, 92, 0.5, -0.17), known.crown(), 1, known.valves()));
        List<Pocket> deeper = known.crown().pockets().stream()
                .map(p -> new Pocket(p.diameterMm(), p.depthMm() + 0.02, p.offsetMm(), p.azimuthDeg(), p.tiltDeg()))
                .toList();
        assertSame(
                least, new TopEnd(50, known.crank(), new Crown(known.crown().form(), 49.6, deeper), 1, known.valves()));
        Valve first = known.valves().get(0);
        Valve larger = new Valve(
                first.headDiameterMm() + 0.03,
                first.marginMm(),
                first.offsetMm(),
                first.azimuthDeg(),
                first.tiltDeg(),
                first.recessMm(),
                first.lift());
        assertSame(
                least,
                new TopEnd(
                        50,
                        known.crank(),
                        known.crown(),
                        1,
                        List.of(larger, known.valves().get(1))));
    }
}
