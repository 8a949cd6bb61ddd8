package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuadratureTest {
    @Test
    void theKronrodRuleIsExactForPolynomialsOfDegree22() {
        double integral = Quadrature.integrate(x -> Math.pow(x, 22) + Math.pow(x, 7), -1, 1.5, 1e9, 0);
        double exact = (Math.pow(1.5, 23) + 1) / 23 + (Math.pow(1.5, 8) - 1) / 8;
        assertThat(integral).isCloseTo(exact, within(1e-11 * exact));
    }

    @Test
    void panelsAreHalvedAtAKinkAndAtAJump() {
        assertThat(Quadrature.integrate(x -> Math.abs(x - 0.3), 0, 1, 1e-9, 30)).isCloseTo(0.29, within(1e-8));
        assertThat(Quadrature.integrate(x -> x < 0.3 ? 1 : 0, 0, 1, 1e-9, 40)).isCloseTo(0.3, within(1e-8));
    }
}
