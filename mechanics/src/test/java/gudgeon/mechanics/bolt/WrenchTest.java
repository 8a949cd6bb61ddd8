package gudgeon.mechanics.bolt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrenchTest {
    @ParameterizedTest
    @CsvSource({"5, 25, 5, 4", "10, 100, 20, 4", "2, 10, 2, 6", "0, 60, 12, 4", "40, 100, 40, 4"})
    void trustedFromAFifthOfTheScale(double least, double most, double from, double percent) {
        WrenchRange range = new WrenchRange(least, most);
        assertThat(range.trustedFromNm()).isCloseTo(from, within(1e-12));
        assertThat(range.trusts(from)).isTrue();
        assertThat(range.trusts(from - 0.01)).isFalse();
        assertThat(range.trusts(most)).isTrue();
        assertThat(range.trusts(most + 0.01)).isFalse();
        assertThat(range.permissiblePercent()).isEqualTo(percent);
    }

    /** Moments by hand: 80 N·m with 50 mm on an arm of 400 mm is 80 · 400/450; square to the arm nothing changes. */
    @ParameterizedTest
    @CsvSource({"50, 0, 71.111", "50, 90, 80", "50, 180, 91.429", "50, 45, 73.503"})
    void anAdapterChangesTheSetting(double length, double angle, double setting) {
        Adapter adapter = new Adapter(length, angle, 400);
        assertThat(adapter.settingNm(80)).isCloseTo(setting, within(0.0006));
        assertThat(adapter.givesNm(adapter.settingNm(80))).isCloseTo(80, within(1e-9));
    }

    /** NIST SP 811, appendix B.8 (from memory). */
    @ParameterizedTest
    @CsvSource({"lbf.ft, 1.355818", "lbf·in, 0.1129848", "kgf.m, 9.80665", "KGF.CM, 0.0980665", "N·m, 1", "Nm, 1"})
    void unitsAreExact(String symbol, double newtonMetres) {
        TorqueUnit unit = TorqueUnit.of(symbol).orElseThrow();
        assertThat(unit.toNm(1)).isCloseTo(newtonMetres, within(5e-7 * newtonMetres));
        assertThat(unit.fromNm(unit.toNm(7))).isCloseTo(7, within(1e-12));
    }

    @Test
    void aFootIsTwelveInchesAndAMetreAHundredCentimetres() {
        assertThat(TorqueUnit.POUND_FORCE_INCH.toNm(12)).isCloseTo(TorqueUnit.POUND_FORCE_FOOT.toNm(1), within(1e-15));
        assertThat(TorqueUnit.KILOGRAM_FORCE_CENTIMETRE.toNm(100)).isEqualTo(TorqueUnit.KILOGRAM_FORCE_METRE.toNm(1));
    }

    @Test
    void badInputIsRefused() {
        assertThatThrownBy(() -> new WrenchRange(10, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Adapter(50, 180, 40)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SlottedNut(0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(TorqueUnit.of("furlong")).isEmpty();
        assertThat(new SlottedNut(6).mostTurnDeg()).isEqualTo(60);
    }
}
