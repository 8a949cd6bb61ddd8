package gudgeon.mechanics.valvetrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValvetrainTest {
    /**
     * Peak factors of the laws, for a rise of 1 over an angle of 1: R. L. Norton, Cam Design and Manufacturing Handbook, table of
     * cam functions (values from memory: harmonic 1.571 and 4.935, cycloidal 2.000 and 6.283, 3-4-5 1.875 and 5.774, 4-5-6-7
     * 2.188 and 7.526; the last is 84 sqrt(5) / 25 = 7.513 by differentiating the polynomial).
     */
    @ParameterizedTest
    @CsvSource({
        "HARMONIC, 1.571, 4.935",
        "CYCLOIDAL, 2.000, 6.283",
        "POLYNOMIAL_345, 1.875, 5.774",
        "POLYNOMIAL_4567, 2.188, 7.513"
    })
    void lawsHaveTheirPublishedPeaks(LiftLaw law, double velocity, double acceleration) {
        double h = 1e-4;
        double v = 0;
        double a = 0;
        for (double x = 2 * h; x < 1 - 2 * h; x += h) {
            v = Math.max(v, (law.rise(x + h) - law.rise(x - h)) / (2 * h));
            a = Math.max(a, Math.abs(law.rise(x + h) - 2 * law.rise(x) + law.rise(x - h)) / (h * h));
        }
        assertThat(v).isCloseTo(velocity, within(0.001));
        assertThat(a).isCloseTo(acceleration, within(0.01));
    }

    @Property
    void lawsRiseAlikeFromBothEnds(@ForAll LiftLaw law, @ForAll @DoubleRange(min = 0, max = 1) double x) {
        assertThat(law.rise(x) + law.rise(1 - x)).isCloseTo(1, within(1e-12));
    }

    private static LiftTable table(double step, LawLift law) {
        double[] angles = IntStream.rangeClosed((int) (-140 / step), (int) (140 / step))
                .mapToDouble(i -> i * step)
                .toArray();
        return new LiftTable(angles, Arrays.stream(angles).map(law::mmAt).toArray());
    }

    @Property
    void aTableMeetsItsReadingsAndComesNearTheLawBetween(@ForAll @DoubleRange(min = -400, max = 800) double theta) {
        LawLift law = new LawLift(LiftLaw.POLYNOMIAL_345, 260, 6.2);
        LiftTable table = table(5, law);
        assertThat(table.mmAt(theta)).isCloseTo(law.mmAt(theta), within(0.01));
        assertThat(table.mmAt(theta + 720)).isCloseTo(table.mmAt(theta), within(1e-9));
        assertThat(table.mmAt(Math.rint(theta / 5) * 5)).isCloseTo(law.mmAt(Math.rint(theta / 5) * 5), within(1e-9));
    }

    /** Fritsch and Carlson's point, 1980: between two readings the curve never leaves the span of the two. */
    @Property
    void aTableNeverOvershoots(
            @ForAll @IntRange(min = 0, max = 500) int seed, @ForAll @DoubleRange(min = 0, max = 1) double t) {
        SplittableRandom r = new SplittableRandom(seed);
        double[] angles = new double[12];
        double[] lifts = new double[12];
        for (int i = 0; i < 12; i++) {
            angles[i] = (i == 0 ? -150 : angles[i - 1]) + 2 + 20 * r.nextDouble();
            lifts[i] = 8 * r.nextDouble();
        }
        LiftTable table = new LiftTable(angles, lifts);
        for (int i = 0; i < 11; i++) {
            double here = table.mmAt(angles[i] + t * (angles[i + 1] - angles[i]));
            assertThat(here)
                    .isBetween(Math.min(lifts[i], lifts[i + 1]) - 1e-9, Math.max(lifts[i], lifts[i + 1]) + 1e-9);
        }
    }

    /**
     * NAG Library Manual, example of routines E01BEF and E01BFF (the slopes of Fritsch and Butland): interpolated values in the
     * spans whose slopes do not hang on how the ends are treated.
     */
    @ParameterizedTest
    @CsvSource({"9.1910, 0.4640", "10.3920, 0.9645", "11.5930, 0.9965", "12.7940, 0.9992", "13.9950, 0.9998"})
    void aTableGivesThePublishedValues(double at, double value) {
        LiftTable table = new LiftTable(
                new double[] {7.99, 8.09, 8.19, 8.70, 9.20, 10.00, 12.00, 15.00, 20.00},
                new double[] {0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994});
        assertThat(table.mmAt(at)).isCloseTo(value, within(5e-5));
    }

    @Property
    void camDegreesAreTwoOfTheCrank(@ForAll @DoubleRange(min = -360, max = 360) double theta) {
        double[] lifts = {0, 2, 6, 3, 0};
        LiftTable cam = LiftTable.ofCamDegrees(new double[] {-60, -25, 0, 30, 60}, lifts);
        LiftTable crank = new LiftTable(new double[] {-120, -50, 0, 60, 120}, lifts);
        assertThat(cam.mmAt(theta)).isEqualTo(crank.mmAt(theta));
    }

    @Test
    void aTableThatIsNoneIsRefused() {
        assertThatThrownBy(() -> new LiftTable(new double[] {0, 1}, new double[] {0, 1}))
                .hasMessageContaining("three");
        assertThatThrownBy(() -> new LiftTable(new double[] {0, 2, 1}, new double[] {0, 1, 0}))
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> new LiftTable(new double[] {0, 1, 2}, new double[] {0, -1, 0}))
                .hasMessageContaining("0 mm or more");
        assertThatThrownBy(() -> new LiftTable(new double[] {0, 1, 720}, new double[] {0, 1, 0}))
                .hasMessageContaining("720");
    }

    @Property
    void theBandMeetsItsPointsAndItsGreatest(
            @ForAll @DoubleRange(min = 0, max = 719) double theta, @ForAll @DoubleRange(min = 0.3, max = 3) double at) {
        LiftBand band = LiftBand.of(300, 540, at, 6.5);
        for (Lift bound : List.of(band.lean(), band.full())) {
            assertThat(bound.mmAt(300)).isCloseTo(at, within(1e-6));
            assertThat(bound.mmAt(540)).isCloseTo(at, within(1e-6));
            assertThat(bound.mmAt(420)).isCloseTo(6.5, within(1e-9));
        }
        assertThat(band.lean().mmAt(theta)).isLessThanOrEqualTo(band.full().mmAt(theta));
    }

    @Property
    void theBandHoldsEveryLawThroughItsPoints(
            @ForAll @DoubleRange(min = 0, max = 719) double theta,
            @ForAll @DoubleRange(min = 0.3, max = 3) double at,
            @ForAll LiftLaw law) {
        Assume.that(law != LiftLaw.CYCLOIDAL);
        LawLift lift = new LawLift(law, 300, 6.5);
        LiftEvents events = LiftEvents.of(lift, at);
        double half = (events.closesDeg() - events.opensDeg() + 720) % 720 / 2;
        LiftBand band = LiftBand.of(420 - half, 420 + half, at, 6.5);
        assertThat(lift.mmAt(theta - 420))
                .isBetween(band.lean().mmAt(theta) - 1e-6, band.full().mmAt(theta) + 1e-6);
    }

    /** At nearly the greatest lift the leaning laws would last longer than the cycle, so they are left out. */
    @Test
    void theBandMeetsItsPointsHoweverHighTheyAre() {
        LiftBand band = LiftBand.of(200, 600, 6.3, 6.5);
        assertThat(band.lean().mmAt(200)).isCloseTo(6.3, within(1e-6));
        assertThat(band.full().mmAt(600)).isCloseTo(6.3, within(1e-6));
    }

    @Test
    void aValveLiftsByRockerLessClearance() {
        Lift lobe = new LawLift(LiftLaw.HARMONIC, 240, 5);
        Lift valve = new TimedLift(lobe, 252, 1.2, 0.1);
        assertThat(valve.mmAt(252)).isCloseTo(5.9, within(1e-12));
        assertThat(valve.mmAt(600)).isZero();
        assertThat(LiftEvents.of(valve, 1).greatestDeg()).isCloseTo(252, within(1e-4));
        Lift between = new TimedLift(lobe, 252.1, 1.2, 0.1);
        assertThat(LiftEvents.of(between, 1).greatestDeg()).isCloseTo(252.1, within(1e-4));
        assertThat(LiftEvents.of(between, 1).greatestMm()).isCloseTo(5.9, within(1e-9));
    }

    /** With harmonic motion the angles at a lift have a closed form. */
    @Test
    void openingAndClosingAreWhereTheLawSays() {
        Lift lift = new TimedLift(new LawLift(LiftLaw.HARMONIC, 240, 6), 466, 1, 0);
        double fraction = Math.acos(1 - 2 * 1.0 / 6) / Math.PI;
        LiftEvents events = LiftEvents.of(lift, 1);
        assertThat(events.opensDeg()).isCloseTo(466 - 120 * (1 - fraction), within(1e-4));
        assertThat(events.closesDeg()).isCloseTo(466 + 120 * (1 - fraction), within(1e-4));
        assertThat(LiftEvents.atOverlapMm(lift)).isEqualTo(lift.mmAt(360));
        assertThatThrownBy(() -> LiftEvents.of(lift, 7)).hasMessageContaining("7.0 mm");
    }

    @Property
    void aWholeSprocketOfTeethChangesNothing(
            @ForAll @IntRange(min = 10, max = 60) int teeth, @ForAll @DoubleRange(min = 0, max = 720) double theta) {
        Lift lobe = new LawLift(LiftLaw.CYCLOIDAL, 250, 6);
        Lift marked = new TimedLift(lobe, 466, 1, 0);
        Lift round = new TimedLift(lobe, 466 + TimedLift.shiftDeg(teeth, teeth), 1, 0);
        assertThat(round.mmAt(theta)).isCloseTo(marked.mmAt(theta), within(1e-9));
        assertThat(TimedLift.shiftDeg(1, 28)).isCloseTo(720.0 / 28, within(1e-12));
    }
}
