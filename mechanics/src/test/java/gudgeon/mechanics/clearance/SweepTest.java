package gudgeon.mechanics.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.crank.Crank;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Closed forms: elementary geometry of planes, spheres and discs (H. S. M. Coxeter, Introduction to Geometry). */
class SweepTest {
    private static final double TOLERANCE = 0.001;

    private static TopEnd flat(Valve valve, Pocket... pockets) {
        return new TopEnd(
                50,
                new Crank(25, 92, 0, -0.2),
                new Crown(new CrownForm.Flat(), 49.6, List.of(pockets)),
                1,
                List.of(valve));
    }

    @Test
    void anUprightValveOverAFlatCrownIsAsFarAsTheHeightsSay() {
        Valve valve = new Valve(20, 1, 10, 0, 0, 2, Examples.lift(360, 240, 5));
        Gaps gaps = new Sweep().gaps(flat(valve));
        double expected = 1 + 2 - 5 + 0.2;
        ValveGaps found = gaps.valves().get(0);
        assertThat(found.bore().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.valve().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.nearest().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.bore().atDeg()).isCloseTo(360, within(0.05));
        assertThat(found.side()).isEmpty();
        assertThat(gaps.deck().leastMm()).isCloseTo(1.2, within(1e-9));
        assertThat(gaps.valveToValve()).isEmpty();
    }

    @Test
    void aPocketGivesBackItsDepthAndItsWallIsTheDifferenceOfRadii() {
        Valve valve = new Valve(20, 1, 10, 0, 0, 2, Examples.lift(360, 240, 5));
        ValveGaps found = new Sweep()
                .gaps(flat(valve, new Pocket(24, 3, 10.5, 0, 0)))
                .valves()
                .get(0);
        assertThat(found.bore().leastMm()).isCloseTo(1.2, within(TOLERANCE));
        assertThat(found.side().orElseThrow().leastMm()).isCloseTo(12 - 10 - 0.5, within(TOLERANCE));
        assertThat(found.nearest().leastMm()).isCloseTo(1.2, within(TOLERANCE));
    }

    @Test
    void aPocketTooSmallAcrossMeetsTheValvesEdge() {
        Valve valve = new Valve(20, 1, 10, 0, 0, 2, Examples.lift(360, 240, 5));
        ValveGaps found = new Sweep()
                .gaps(flat(valve, new Pocket(19, 3, 10, 0, 0)))
                .valves()
                .get(0);
        assertThat(found.side().orElseThrow().leastMm()).isCloseTo(-0.5, within(TOLERANCE));
        assertThat(found.bore().leastMm()).isCloseTo(-1.8, within(TOLERANCE));
    }

    @Test
    void aDomeFacesAnUprightValveWithItsSummit() {
        Valve valve = new Valve(20, 1, 0, 0, 0, 8, Examples.lift(360, 240, 3));
        TopEnd topEnd = new TopEnd(
                50,
                new Crank(25, 92, 0, -0.2),
                new Crown(new CrownForm.Dome(4, 40), 49.6, List.of()),
                1,
                List.of(valve));
        ValveGaps found = new Sweep().gaps(topEnd).valves().get(0);
        assertThat(found.bore().leastMm()).isCloseTo(9 - 3 - (4 - 0.2), within(TOLERANCE));
        assertThat(found.nearest().place().xMm()).isCloseTo(0, within(0.01));
        assertThat(found.nearest().place().zMm()).isCloseTo(3.8, within(TOLERANCE));
    }

    /** Sphere and plane: a leaning face's distance is that of the sphere's centre to the plane, less the radius. */
    @Test
    void aDomeFacesALeaningValveWhereTheirDirectionsAgree() {
        double tilt = Math.toRadians(10);
        Valve valve = new Valve(40, 1, 0, 30, 10, 12, Examples.shut());
        TopEnd topEnd = new TopEnd(
                60, new Crank(25, 92, 0, 0), new Crown(new CrownForm.Dome(6, 44), 49.6, List.of()), 1, List.of(valve));
        double radius = (22.0 * 22 + 36) / 12;
        double centre = 6 - radius;
        double expected = (13 - centre) * Math.cos(tilt) - radius;
        ValveGaps found = new Sweep().gaps(topEnd).valves().get(0);
        assertThat(found.nearest().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.valve().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.bore().leastMm()).isCloseTo(expected / Math.cos(tilt), within(TOLERANCE));
    }

    @Test
    void aValveParallelToItsPocketKeepsToTheFloor() {
        Valve valve = new Valve(20, 1, 12, 180, 25, 2, Examples.lift(360, 240, 5));
        double axisAtPlane = 12;
        TopEnd topEnd = flat(valve, new Pocket(26, 4, axisAtPlane, 180, 25));
        ValveGaps found = new Sweep().gaps(topEnd).valves().get(0);
        // along the stem: from the plane up to the shut face, less lift, plus depth; the piston stands 0.2 below the
        // deck
        double expected = 3.2 * Math.cos(Math.toRadians(25)) - 5 + 4;
        assertThat(found.valve().leastMm()).isCloseTo(expected, within(TOLERANCE));
        assertThat(found.bore().leastMm()).isCloseTo(expected / Math.cos(Math.toRadians(25)), within(TOLERANCE));
    }

    @Test
    void tightAnglesAreTheEndsOfTheTouchingSpan() {
        Valve valve = new Valve(20, 1, 10, 0, 0, 2, Examples.lift(350, 240, 5));
        TopEnd topEnd = new TopEnd(
                50, new Crank(25, 92, 0, 1), new Crown(new CrownForm.Flat(), 49.6, List.of()), 1.5, List.of(valve));
        Gaps gaps = new Sweep().gaps(topEnd);
        Span span = gaps.valves().get(0).bore().touching().get(0);
        assertThat(gaps.tightForwardDeg()).hasValue(span.fromDeg());
        assertThat(gaps.tightBackwardDeg()).hasValue(span.toDeg());
        for (double end : new double[] {span.fromDeg(), span.toDeg()}) {
            double gap = 3.5 - valve.lift().mmAt(end) - topEnd.crank().crownHeightMm(end);
            assertThat(gap).isCloseTo(0, within(0.001));
        }
    }

    @Test
    void aCrownProudOfTheGasketTouchesTheHeadRoundBothTopDeadCentres() {
        TopEnd topEnd = new TopEnd(
                50, new Crank(25, 92, 0, 1.2), new Crown(new CrownForm.Flat(), 49.6, List.of()), 1, List.of());
        Gaps gaps = new Sweep().gaps(topEnd);
        assertThat(gaps.deck().leastMm()).isCloseTo(-0.2, within(1e-9));
        assertThat(gaps.deck().touching()).hasSize(2);
        assertThat(gaps.tightForwardDeg().orElseThrow()).isBetween(340.0, 360.0);
        assertThat(gaps.tightBackwardDeg().orElseThrow()).isBetween(0.0, 20.0);
    }

    @Test
    void aLeaningOffsetValveIsMeasuredToTheBarrelItDipsInto() {
        Valve valve = new Valve(24, 1, 14, 0, 0, 1, Examples.lift(360, 240, 6));
        Gaps gaps = new Sweep().gaps(flat(valve));
        assertThat(gaps.valves().get(0).wall().leastMm()).isCloseTo(25 - 26, within(TOLERANCE));
        assertThat(gaps.valves().get(0).wall().touching()).isNotEmpty();
    }

    @Test
    void twoUprightHeadsAreAsFarApartAsTheirRims() {
        TopEnd topEnd = new TopEnd(
                60,
                new Crank(25, 92, 0, -5),
                new Crown(new CrownForm.Flat(), 49.6, List.of()),
                1,
                List.of(
                        new Valve(20, 1, 11, 180, 0, 9, Examples.shut()),
                        new Valve(24, 1, 13, 0, 0, 9, Examples.lift(360, 200, 4))));
        // side by side when both are shut
        assertThat(new Sweep().gaps(topEnd).valveToValve().get(0).gap().leastMm())
                .isCloseTo(24 - 22, within(TOLERANCE));
    }

    @Test
    void headsThatMeetEvenWhenShutTouchAllTheWayRound() {
        TopEnd topEnd = new TopEnd(
                60,
                new Crank(25, 92, 0, -5),
                new Crown(new CrownForm.Flat(), 49.6, List.of()),
                1,
                List.of(
                        new Valve(20, 1, 9, 180, 0, 9, Examples.shut()),
                        new Valve(20, 1, 9, 0, 0, 9, Examples.shut())));
        Gap gap = new Sweep().gaps(topEnd).valveToValve().get(0).gap();
        // heads of one height, 1 mm thick: the deepest point is half-way through
        assertThat(gap.leastMm()).isCloseTo(-0.5, within(TOLERANCE));
        assertThat(gap.touching()).containsExactly(new Span(0, 720));
    }

    @Test
    void aStepThatIsNoStepIsRefused() {
        assertThatThrownBy(() -> new Sweep().curves(Examples.leaningPair(3), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theCurvesNeverFallBelowTheLeast() {
        TopEnd topEnd = Examples.leaningPair(0.8);
        Gaps gaps = new Sweep().gaps(topEnd);
        Curves curves = new Sweep().curves(topEnd, 0.5);
        for (int v = 0; v < 2; v++) {
            double least = Double.POSITIVE_INFINITY;
            double nearest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < curves.thetaDeg().length; i++) {
                least = Math.min(least, curves.boreMm()[v][i]);
                nearest = Math.min(nearest, curves.nearestMm()[v][i]);
            }
            assertThat(least).isCloseTo(gaps.valves().get(v).bore().leastMm(), within(0.002));
            assertThat(nearest).isCloseTo(gaps.valves().get(v).nearest().leastMm(), within(0.002));
            assertThat(least).isGreaterThan(gaps.valves().get(v).bore().leastMm() - TOLERANCE);
        }
    }
}
