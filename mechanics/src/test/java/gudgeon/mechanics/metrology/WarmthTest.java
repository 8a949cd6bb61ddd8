package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WarmthTest {
    private static final Quantity STEEL = Quantity.stated(11.5e-6, 1e-6);
    private static final Quantity ALUMINIUM = Quantity.stated(23.0e-6, 1e-6);

    @Test
    void anAluminiumPistonReadWarmIsSmallerAtTwenty() {
        // by hand: 40 mm times 11.5e-6 per kelvin times 10 K = 4.6 micrometres
        Quantity at20 = new Warmth(30, 0, ALUMINIUM, STEEL).at20(Quantity.exact(40));
        assertThat(at20.value()).isEqualTo(40 - 0.0046, within(1e-9));
        // both expansions 1e-6 / sqrt 3: 40 * 10 * 1e-6 * sqrt(2 / 3)
        assertThat(at20.standardUncertainty()).isEqualTo(4e-4 * Math.sqrt(2.0 / 3), within(1e-9));
    }

    @Test
    void alikeAndAtTwentyNothingChanges() {
        assertThat(new Warmth(20, 0, ALUMINIUM, STEEL).at20(Quantity.exact(40)).value())
                .isEqualTo(40);
        assertThat(new Warmth(5, 0, STEEL, STEEL).at20(Quantity.exact(40)).value())
                .isEqualTo(40);
    }

    @Test
    void apartFromOneAnotherTheyAddDoubtEvenAtTwenty() {
        Quantity at20 = new Warmth(20, 2, ALUMINIUM, STEEL).at20(Quantity.exact(40));
        assertThat(at20.standardUncertainty()).isEqualTo(40 * 23e-6 * 2 / Math.sqrt(3), within(1e-9));
        assertThat(at20.doubts()).extracting(Doubt::origin).containsExactly(Origin.TEMPERATURE);
    }
}
