package gudgeon.mechanics.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Quantity;
import org.junit.jupiter.api.Test;

class FinishedBoreTest {
    /**
     * A car maker's repair instruction of 2004 (lemon-manuals.org.ua, "Boring Cylinder"): bored size is piston plus 0.02 to
     * 0.04 mm of clearance less 0.01 mm for the hone. The piston is ours.
     */
    @Test
    void agreesWithAPublishedInstruction() {
        FinishedBore bore = FinishedBore.of(Quantity.exact(39.48), 0.02, 0.04, 0.01);
        assertThat(bore.leastMm()).isEqualTo(39.50, within(1e-9));
        assertThat(bore.mostMm()).isEqualTo(39.52, within(1e-9));
        assertThat(bore.boredMm(0.01)).isEqualTo(39.48 + 0.02 - 0.01, within(1e-9));
        assertThat(bore.proved()).isTrue();
    }

    @Test
    void thePistonsDoubtIsKeptAwayFromBothEnds() {
        // 2 u = 0.004 / sqrt(3) * 2 = 0.0046: 39.5046 to 39.5354, in steps of 0.005 rounded inwards
        FinishedBore bore = FinishedBore.of(Quantity.stated(39.48, 0.004), 0.02, 0.06, 0.005);
        assertThat(bore.leastMm()).isEqualTo(39.505, within(1e-9));
        assertThat(bore.mostMm()).isEqualTo(39.535, within(1e-9));
        assertThat(bore.proved()).isTrue();
    }

    @Test
    void aDoubtThatLeavesNothingIsSaid() {
        FinishedBore bore = FinishedBore.of(Quantity.stated(39.48, 0.03), 0.02, 0.04, 0.01);
        assertThat(bore.proved()).isFalse();
        assertThat(bore.leastMm()).isEqualTo(39.50, within(1e-9));
        assertThat(bore.mostMm()).isEqualTo(39.52, within(1e-9));
    }

    @Test
    void theWallLosesHalfOfWhatTheBoreGainsAndTheShift() {
        FinishedBore bore = new FinishedBore(39.50, 39.52, true);
        assertThat(bore.wallLeftMm(3.0, 39.0, 0.1)).isEqualTo(2.64, within(1e-9));
    }

    @Test
    void clearanceTheWrongWayRoundIsRefused() {
        assertThatThrownBy(() -> FinishedBore.of(Quantity.exact(39), 0.05, 0.02, 0.01))
                .hasMessageContaining("from least to most");
    }

    @Test
    void aRingsGapGrowsWithTheCircumference() {
        Quantity gap = RingGap.inBore(Quantity.exact(0.20), Quantity.exact(39.50), Quantity.stated(39.52, 0.01));
        assertThat(gap.value()).isEqualTo(0.20 + 0.0628318, within(1e-6));
        assertThat(gap.standardUncertainty()).isEqualTo(Math.PI * 0.01 / Math.sqrt(3), within(1e-9));
        assertThat(RingGap.usualLeastMm(40)).isLessThan(RingGap.usualMostMm(40));
    }
}
