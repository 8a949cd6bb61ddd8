package gudgeon.mechanics.crank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CrankTest {
    private static final Crank STRAIGHT = new Crank(25, 92, 0, -0.2);
    private static final Crank OFFSET = new Crank(25, 92, 1.5, -0.2);

    /** J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.5: s = a cos t + sqrt(l^2 - a^2 sin^2 t). */
    @Property
    void heightIsThatOfTheTextbook(@ForAll @DoubleRange(min = 0, max = 720) double theta) {
        double t = Math.toRadians(theta);
        double s = 25 * Math.cos(t) + Math.sqrt(92 * 92 - Math.pow(25 * Math.sin(t), 2));
        assertThat(STRAIGHT.crownHeightMm(theta)).isCloseTo(s - 117 - 0.2, within(1e-9));
    }

    /**
     * R. L. Norton, Design of Machinery, example 4-2 (from memory): crank 40 mm, coupler 120 mm, offset -20 mm, crank at 60 degrees;
     * the slider stands at 126.8 mm. Its angle is from the line of sliding, so that the crown, which has its own height 0 at top
     * dead centre, is below the stretched length sqrt(160^2 - 20^2) by the rest.
     */
    @Test
    void offsetHeightIsThatOfTheTextbook() {
        Crank crank = new Crank(40, 120, 20, 0);
        double theta = 60 + Math.toDegrees(Math.asin(20.0 / 160));
        assertThat(crank.crownHeightMm(theta) + Math.sqrt(160 * 160 - 20 * 20)).isCloseTo(126.8, within(0.05));
    }

    @Property
    void withoutOffsetTheFlanksAreAlike(@ForAll @DoubleRange(min = 0, max = 180) double theta) {
        assertThat(STRAIGHT.crownHeightMm(-theta)).isCloseTo(STRAIGHT.crownHeightMm(theta), within(1e-12));
        assertThat(STRAIGHT.crownHeightMm(720 - theta)).isCloseTo(STRAIGHT.crownHeightMm(theta), within(1e-9));
    }

    /** Heywood, eq. 2.11: Sp / mean Sp = pi/2 sin t (1 + cos t / sqrt(R^2 - sin^2 t)), R rod over crank radius. */
    @Property
    void speedIsThatOfTheTextbook(@ForAll @DoubleRange(min = 0, max = 720) double theta) {
        double t = Math.toRadians(theta);
        double ratio = 92.0 / 25;
        double expected =
                Math.PI / 2 * Math.sin(t) * (1 + Math.cos(t) / Math.sqrt(ratio * ratio - Math.pow(Math.sin(t), 2)));
        assertThat(-STRAIGHT.speedMPerS(theta, 3000) / STRAIGHT.meanPistonSpeedMPerS(3000))
                .isCloseTo(expected, within(1e-9));
    }

    /** At the dead centres r w^2 (1 +- r/l): the textbook's greatest accelerations (Norton, Design of Machinery, ch. 13). */
    @Test
    void accelerationAtTheDeadCentresIsThatOfTheTextbook() {
        double w = 3000 * 2 * Math.PI / 60;
        double r = 0.025;
        double ratio = 25.0 / 92;
        assertThat(STRAIGHT.accelerationMPerS2(0, 3000)).isCloseTo(-r * w * w * (1 + ratio), within(1e-6));
        assertThat(STRAIGHT.accelerationMPerS2(180, 3000)).isCloseTo(r * w * w * (1 - ratio), within(1e-6));
    }

    @Property
    void speedAndAccelerationAreTheDerivativesOfTheHeight(@ForAll @DoubleRange(min = 0, max = 720) double theta) {
        double h = 1e-2;
        double up = OFFSET.crownHeightMm(theta + h);
        double down = OFFSET.crownHeightMm(theta - h);
        assertThat(OFFSET.speedMmPerDeg(theta)).isCloseTo((up - down) / (2 * h), within(1e-7));
        assertThat(OFFSET.accelerationMmPerDeg2(theta))
                .isCloseTo((up - 2 * OFFSET.crownHeightMm(theta) + down) / (h * h), within(1e-6));
    }

    @Test
    void theHighestIsAtNoughtAndTheLowestAtTheBottom() {
        assertThat(OFFSET.crownHeightMm(0)).isCloseTo(-0.2, within(1e-12));
        assertThat(OFFSET.speedMmPerDeg(0)).isCloseTo(0, within(1e-12));
        assertThat(OFFSET.speedMmPerDeg(OFFSET.bottomDeg())).isCloseTo(0, within(1e-12));
        assertThat(OFFSET.travelMm(OFFSET.bottomDeg())).isCloseTo(OFFSET.strokeMm(), within(1e-9));
        assertThat(OFFSET.strokeMm()).isGreaterThan(50);
        assertThat(STRAIGHT.strokeMm()).isCloseTo(50, within(1e-12));
    }

    @Property
    void travelAndAngleAreEachOthersReturn(@ForAll @DoubleRange(min = 0.01, max = 49.9) double travel) {
        assertThat(OFFSET.travelMm(OFFSET.degAfterTop(travel))).isCloseTo(travel, within(1e-9));
        assertThat(OFFSET.travelBeforeTopMm(OFFSET.degBeforeTop(travel))).isCloseTo(travel, within(1e-9));
        assertThat(STRAIGHT.degAfterTop(travel)).isCloseTo(STRAIGHT.degBeforeTop(travel), within(1e-9));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> OFFSET.degAfterTop(-1)).hasMessageContaining("travel");
        assertThatThrownBy(() -> OFFSET.degAfterTop(51)).hasMessageContaining("stroke");
        assertThatThrownBy(() -> new Crank(25, 20, 0, 0)).hasMessageContaining("rod");
    }
}
