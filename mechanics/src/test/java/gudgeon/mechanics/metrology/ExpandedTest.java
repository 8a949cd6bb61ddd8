package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ExpandedTest {
    @Test
    void theEndGaugeOfTheGuide() {
        // JCGM 100:2008, H.1.6 and H.1.8: 838 nm, u = 32 nm, 16 degrees of freedom, t(99 %) = 2.92, U = 93 nm
        Budget budget = Budget.of(EndGauge.inputs(), EndGauge::departure);
        Quantity length = Quantity.of(
                budget.value(),
                new Doubt(
                        Origin.STATED,
                        Distribution.NORMAL,
                        budget.standardUncertainty(),
                        Math.floor(budget.effectiveDegreesOfFreedom())));
        Expanded expanded = Expanded.of(length, 0.99);
        assertThat(length.value()).isEqualTo(838, within(0.5));
        assertThat(length.degreesOfFreedom()).isEqualTo(16, within(1e-9));
        assertThat(expanded.coverageFactor()).isEqualTo(2.92, within(0.005));
        assertThat(expanded.halfWidth()).isEqualTo(93, within(1.0));
    }

    @Test
    void theFactorFollowsTheDegreesOfFreedom() {
        // JCGM 100:2008, table G.2, 95 %: 12.71 for 1, 2.57 for 5, 2.09 for 20 (19), 1.960 for infinitely many
        assertThat(factor(1)).isEqualTo(12.71, within(0.005));
        assertThat(factor(5)).isEqualTo(2.57, within(0.005));
        assertThat(factor(19)).isEqualTo(2.09, within(0.005));
        assertThat(factor(Double.POSITIVE_INFINITY)).isEqualTo(1.960, within(0.0005));
        assertThat(factor(1e5)).isEqualTo(1.960, within(0.0005));
    }

    @Test
    void theGuardBandIsWhereTheVerdictTurns() {
        Quantity size = Quantity.read(0, 0.01, 0.004);
        double guard = Expanded.guardBand(size, Conformity.DEFAULT_PROOF);
        ToleranceInterval justEnough = ToleranceInterval.atMost(guard * 1.0001);
        ToleranceInterval notQuite = ToleranceInterval.atMost(guard * 0.9999);
        assertThat(Conformity.of(size, justEnough).zone()).isEqualTo(Zone.IN);
        assertThat(Conformity.of(size, notQuite).zone()).isEqualTo(Zone.UNPROVEN);
    }

    @Test
    void scatterIsPooledOverPlaces() {
        // by hand: squares 2 + 2 about the means, one degree of freedom each: s = sqrt(4 / 2)
        Scatter scatter = Scatter.pooled(List.of(new double[] {1, 3}, new double[] {11, 13}, new double[] {7}));
        assertThat(scatter.standardDeviation()).isEqualTo(Math.sqrt(2), within(1e-12));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(2);
        assertThat(scatter.ofMeanOf(2).standardUncertainty()).isEqualTo(1, within(1e-12));
        assertThatThrownBy(() -> Scatter.pooled(List.of(new double[] {1}))).hasMessageContaining("twice");
    }

    @Test
    void ofOnePlaceItIsTheScatterOfTheGuide() {
        double[] readings = {20.01, 20.02, 20.02, 20.03};
        assertThat(Scatter.pooled(List.of(readings)).ofMeanOf(4)).isEqualTo(Doubt.repeatReadings(readings));
    }

    @Test
    void equalReadingsAreNotBeyondDoubt() {
        Doubt scatter = Scatter.pooled(List.of(new double[] {20.1, 20.1, 20.1})).ofMeanOf(3);
        Quantity size = Quantity.read(20.1, 0.02, 0.03).with(scatter);
        assertThat(scatter.standardUncertainty()).isZero();
        assertThat(size.standardUncertainty())
                .isEqualTo(Quantity.read(20.1, 0.02, 0.03).standardUncertainty());
    }

    private static double factor(double degreesOfFreedom) {
        Quantity one = Quantity.of(0, new Doubt(Origin.STATED, Distribution.NORMAL, 1, degreesOfFreedom));
        return Expanded.of(one).coverageFactor();
    }
}
