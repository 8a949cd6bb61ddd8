package gudgeon.mechanics.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.limits.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EngagementTest {
    /**
     * FED-STD-H28/2B by hand for M10 with the limits of ISO 965-2: over 1 mm the hole shears over
     * π 9.732 (1/2 + 0.57735 (9.732 - 9.206)/1.5) = 21.48 mm², the screw over π 8.676 (1/2 + 0.57735 (8.862 - 8.676)/1.5) = 15.58 mm².
     */
    @Test
    void shearAreasAreThoseOfTheFormula() {
        Engagement engaged = new Engagement(ScrewThread.of("M10"), 10 + 0.8 * 1.5);
        assertThat(engaged.effectiveMm()).isCloseTo(10, within(1e-9));
        assertThat(engaged.holeShearMm2()).isCloseTo(214.8, within(1.5));
        assertThat(engaged.screwShearMm2()).isCloseTo(155.8, within(1.5));
    }

    @ParameterizedTest
    @CsvSource({"M6, 9000", "M8x1, 20000", "1/4 BSF, 7000", "2 BA, 3000", "5/16 CEI, 8000"})
    void whatIsNeededJustBears(String written, double pull) {
        ScrewThread thread = ScrewThread.of(written);
        double needed = Engagement.neededMm(thread, pull, 108, 480);
        assertThat(new Engagement(thread, needed).stripsAtN(108, 480)).isCloseTo(pull, within(1e-6));
    }

    /** The trade's habit of one and a half to two and a half diameters in alloy for a bolt that is used to the full. */
    @Test
    void aluminiumNeedsAboutTwoDiametersForABoltOf88() {
        double shear = MetalStrength.of(Material.ALUMINIUM).shearMpa();
        double needed = Engagement.neededMm(ScrewThread.of("M6"), 20.1 * 640, shear, 480);
        assertThat(needed / 6).isBetween(1.5, 2.5);
    }

    /** A nut of ISO 4032 is 0.8 to 0.9 diameters high and bears its bolt's proof load without stripping. */
    @Test
    void aSteelNutOfItsClassHoldsItsBolt() {
        double shearOfClass8Nut = 0.6 * 800;
        assertThat(Engagement.neededMm(ScrewThread.of("M8"), 36.6 * 580, shearOfClass8Nut, 480))
                .isLessThan(6.8);
    }

    @Test
    void lessThanTheChamferHoldsNothing() {
        assertThat(new Engagement(ScrewThread.of("M6"), 0.8).stripsAtN(108, 480))
                .isZero();
        assertThatThrownBy(() -> new Engagement(ScrewThread.of("M6"), -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Engagement.neededMm(ScrewThread.of("M6"), 100, 0, 480))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
