package gudgeon.mechanics.bolt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltTest {
    /** VDI 2230:2001, table A1 for fine threads as transcribed by a fastener supplier: preload in kN and torque in N·m at 90 % of yield. */
    @ParameterizedTest
    @CsvSource({
        "M8x1, 8.8, 0.10, 20.7, 22.8", "M8x1, 8.8, 0.14, 19.7, 29.2", "M8x1, 10.9, 0.12, 29.7, 38.3",
        "M8x1, 12.9, 0.12, 34.7, 44.9", "M10x1.25, 8.8, 0.12, 31.6, 51", "M10x1.25, 10.9, 0.14, 45.2, 83",
        "M12x1.25, 8.8, 0.10, 49.1, 79", "M14x1.5, 8.8, 0.12, 64.8, 142", "M16x1.5, 8.8, 0.14, 85.5, 244"
    })
    void preloadAndTorqueAreThoseOfTheTable(String thread, String strength, double friction, double kN, double torque) {
        Bolt bolt = new Bolt(ScrewThread.of(thread), StrengthClass.of(strength), Head.HEXAGON);
        double preload = bolt.preloadAtYieldN(0.9, friction);
        assertThat(preload / 1000).isCloseTo(kN, within(0.012 * kN));
        assertThat(preload * bolt.torquePerN(friction)).isCloseTo(torque, within(0.03 * torque));
    }

    /** ISO 898-1, table 4 (from memory): proof loads in kN. */
    @ParameterizedTest
    @CsvSource({"M6, 8.8, 11.6", "M8, 8.8, 21.2", "M10, 8.8, 33.7", "M6, 4.8, 6.23", "M8, 10.9, 30.4", "M10, 12.9, 56.3"
    })
    void proofLoadsAreThoseOfTheStandard(String thread, String strength, double kN) {
        Bolt bolt = new Bolt(ScrewThread.of(thread), StrengthClass.of(strength), Head.HEXAGON);
        assertThat(bolt.proofLoadN() / 1000).isCloseTo(kN, within(0.01 * kN));
    }

    @Test
    void torqueAndPreloadGoBothWays() {
        Bolt bolt = new Bolt(ScrewThread.of("1/4 BSF"), StrengthClass.C_5_8, Head.PAN);
        assertThat(bolt.preloadN(bolt.torquePerN(0.13) * 4321, 0.13)).isCloseTo(4321, within(1e-9));
    }

    /** Without friction all work goes into the pull: torque times 2π is pull times pitch. */
    @Test
    void withoutFrictionItIsAnInclinedPlane() {
        Bolt bolt = new Bolt(ScrewThread.of("M10"), StrengthClass.C_8_8, Head.HEXAGON);
        assertThat(bolt.torquePerN(0) * 2 * Math.PI).isCloseTo(0.0015, within(1e-12));
    }

    @Test
    void badInputIsRefused() {
        Bolt bolt = new Bolt(ScrewThread.of("M6"), StrengthClass.C_8_8, Head.HEXAGON);
        assertThatThrownBy(() -> bolt.torquePerN(-0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> bolt.preloadAtYieldN(1.1, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> StrengthClass.of("8.9"))
                .isInstanceOf(UnknownFastener.class)
                .hasMessageContaining("known are 4.6");
        assertThat(StrengthClass.of(" a2-70 ")).isEqualTo(StrengthClass.A2_70);
    }
}
