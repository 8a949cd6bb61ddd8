package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuantityTest {
    /** The twenty temperatures of JCGM 100:2008, 4.4.3, table 1, in degrees Celsius. */
    private static final double[] TABLE_1 = {
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
        100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72
    };

    @Test
    void repeatReadingsGiveTheMeanAndItsExperimentalStandardDeviation() {
        // JCGM 100:2008, 4.4.3: mean 100.145, s = 1.489, s of the mean 0.333, all in degrees Celsius
        Quantity temperature = Quantity.meanOf(TABLE_1);
        assertThat(temperature.value()).isEqualTo(100.145, within(0.0005));
        assertThat(temperature.standardUncertainty()).isEqualTo(0.333, within(0.0005));
        assertThat(temperature.standardUncertainty() * Math.sqrt(20)).isEqualTo(1.489, within(0.0005));
        assertThat(temperature.degreesOfFreedom()).isEqualTo(19, within(1e-9));
    }

    @Test
    void statedBoundsAreRectangular() {
        // JCGM 100:2008, 4.3.7, example 1: bounds of 0.40e-6 either way give u = 0.23e-6
        assertThat(Quantity.stated(16.52e-6, 0.40e-6).standardUncertainty()).isEqualTo(0.23e-6, within(0.005e-6));
        // JCGM 100:2008, 4.4.5, figure 2 a): 100 degrees between 96 and 104 gives u = 2.3
        Quantity temperature = Quantity.stated(100, 4);
        assertThat(temperature.standardUncertainty()).isEqualTo(2.3, within(0.05));
        assertThat(temperature.degreesOfFreedom()).isInfinite();
    }

    @Test
    void aStepOfTheScaleLeavesTwentyNineHundredthsOfItself() {
        // JCGM 100:2008, F.2.2.1: u = 0.29 of the step
        assertThat(Doubt.resolution(1).standardUncertainty()).isEqualTo(0.29, within(0.005));
    }

    @Test
    void oneReadingCarriesBothDoubtsOfItsInstrument() {
        // 0.03 / sqrt 3 = 0.017321 and 0.01 / sqrt 12 = 0.0028868, together 0.017559
        Quantity diameter = Quantity.read(21.0, 0.01, 0.03);
        assertThat(diameter.standardUncertainty()).isEqualTo(0.017559, within(1e-6));
        assertThat(diameter.doubts())
                .extracting(Doubt::origin)
                .containsExactly(Origin.RESOLUTION, Origin.PERMISSIBLE_ERROR);
    }

    @Test
    void doubtsOfASumAndOfADifferenceAddUpInSquares() {
        Quantity three = Quantity.of(7, new Doubt(Origin.STATED, Distribution.NORMAL, 3));
        Quantity four = Quantity.of(5, new Doubt(Origin.STATED, Distribution.NORMAL, 4));
        assertThat(three.plus(four).value()).isEqualTo(12);
        assertThat(three.plus(four).standardUncertainty()).isEqualTo(5);
        assertThat(three.minus(four).value()).isEqualTo(2);
        assertThat(three.minus(four).standardUncertainty()).isEqualTo(5);
    }

    @Test
    void degreesOfFreedomCombineByWelchAndSatterthwaite() {
        // JCGM 100:2008, H.1.6: 5.8 nm (24), 3.9 nm (5) and 6.7 nm (8) give 9.7 nm with 25.6 degrees of freedom
        Quantity difference = EndGauge.difference();
        assertThat(difference.standardUncertainty()).isEqualTo(9.7, within(0.05));
        assertThat(difference.degreesOfFreedom()).isEqualTo(25.6, within(0.25));
        assertThat(Quantity.exact(1).degreesOfFreedom()).isInfinite();
    }

    @Test
    void readingsThatAllAgreeLeaveNoScatter() {
        Quantity size = Quantity.meanOf(20.1, 20.1, 20.1);
        assertThat(size.value()).isEqualTo(20.1);
        assertThat(size.standardUncertainty()).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Quantity.meanOf(1.0)).hasMessageContaining("two readings");
        assertThatThrownBy(() -> Quantity.meanOf()).hasMessageContaining("two readings");
        assertThatThrownBy(() -> Quantity.meanOf(1.0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Quantity.stated(1, -0.1)).hasMessageContaining("0 or more");
        assertThatThrownBy(() -> Quantity.exact(Double.POSITIVE_INFINITY)).hasMessageContaining("finite");
        assertThatThrownBy(() -> new Doubt(Origin.STATED, Distribution.NORMAL, 1, 0))
                .hasMessageContaining("freedom");
    }
}
