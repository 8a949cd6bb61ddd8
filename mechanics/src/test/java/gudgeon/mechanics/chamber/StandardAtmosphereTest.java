package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardAtmosphereTest {
    /** ISO 2533:1975, table 5, pressure by geopotential altitude, as printed to six figures. */
    @ParameterizedTest
    @CsvSource({
        "-2000, 127.774",
        "-1900, 126.331",
        "-300, 104.981",
        "0, 101.325",
        "500, 95.4608",
        "1000, 89.8746",
        "1500, 84.5560",
        "1800, 81.4892"
    })
    void isThatOfTheTable(double altitudeM, double kPa) {
        assertThat(StandardAtmosphere.pressureKPa(altitudeM)).isCloseTo(kPa, within(6e-6 * kPa));
    }

    /** U.S. Standard Atmosphere 1976, base of the second layer: 226.32 mbar. */
    @Test
    void endsWhereTheNextLayerBegins() {
        assertThat(StandardAtmosphere.pressureKPa(11000)).isCloseTo(22.632, within(5e-4));
    }

    /** U.S. Standard Atmosphere 1976, table by geometric altitude (from memory): how little the two altitudes differ in pressure. */
    @ParameterizedTest
    @CsvSource({"1000, 89.876", "2000, 79.501", "3000, 70.121"})
    void aSurveyedHeightMayBeTakenForTheAltitude(double heightM, double kPa) {
        assertThat(StandardAtmosphere.pressureKPa(heightM)).isCloseTo(kPa, within(2e-4 * kPa));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2001, 11001, Double.NaN})
    void refusesWhatIsOutsideTheLayer(double altitudeM) {
        assertThatThrownBy(() -> StandardAtmosphere.pressureKPa(altitudeM)).hasMessageContaining("-2000 to 11000 m");
    }
}
