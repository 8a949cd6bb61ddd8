package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CrankingPressureTest {
    private static final double KPA_PER_PSI = 6.894757;

    /** "Compression ratio", Wikipedia: 7.5 to the power 1.3 gives 13.7 bar, 187.1 psi on the gauge (with 14.7 psi of air). */
    @Test
    void agreesWithAPublishedWorkedExample() {
        CrankingPressure range = CrankingPressure.range(7.5, 0);
        assertThat(range.highKPa() / KPA_PER_PSI).isCloseTo(187.1, within(0.15));
        assertThat(range.highKPa() + StandardAtmosphere.SEA_LEVEL_KPA).isCloseTo(1390, within(5.0));
    }

    @Test
    void theRangeIsThatOfTheExponents() {
        CrankingPressure range = CrankingPressure.range(8, 1000);
        assertThat(range.lowKPa()).isCloseTo(89.8746 * (Math.pow(8, 1.2) - 1), within(0.01));
        assertThat(range.highKPa()).isCloseTo(89.8746 * (Math.pow(8, 1.3) - 1), within(0.01));
    }

    @Test
    void refusesARatioBelowOne() {
        assertThatThrownBy(() -> CrankingPressure.range(0.9, 0)).hasMessageContaining("1 or more");
        assertThatThrownBy(() -> CrankingPressure.range(Double.NaN, 0)).hasMessageContaining("1 or more");
    }
}
