package gudgeon.mechanics.crank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PistonSpeedTest {
    /** 85 mm at 5500/min: 15.58 m/s (kfz-tech.de, Formulary, Average piston speed). */
    @Test
    void isThatOfTheFormulary() {
        assertThat(PistonSpeed.meanMPerS(85, 5500)).isCloseTo(15.58, within(0.005));
    }

    /** 90 mm at 3000/min: 9 m/s (motor-car.net, Piston mean speed). */
    @Test
    void isThatOfTheHandbook() {
        assertThat(PistonSpeed.meanMPerS(90, 3000)).isCloseTo(9, within(1e-12));
        assertThat(PistonSpeed.rpm(90, 9)).isCloseTo(3000, within(1e-9));
    }

    @Property
    void thereAndBack(
            @ForAll @DoubleRange(min = 8, max = 300) double stroke, @ForAll @DoubleRange(max = 20000) double rpm) {
        assertThat(PistonSpeed.rpm(stroke, PistonSpeed.meanMPerS(stroke, rpm))).isCloseTo(rpm, within(1e-8));
        assertThat(new Crank(stroke / 2, stroke * 2, 0, 0).meanPistonSpeedMPerS(rpm))
                .isCloseTo(PistonSpeed.meanMPerS(stroke, rpm), within(1e-12));
    }

    @Property
    void aLongerStrokeAllowsFewerTurns(@ForAll @DoubleRange(min = 8, max = 299) double stroke) {
        assertThat(PistonSpeed.rpm(stroke + 1, 6)).isLessThan(PistonSpeed.rpm(stroke, 6));
    }

    @Test
    void refusesWhatIsNoStrokeAndNoSpeed() {
        assertThatIllegalArgumentException().isThrownBy(() -> PistonSpeed.meanMPerS(0, 3000));
        assertThatIllegalArgumentException().isThrownBy(() -> PistonSpeed.rpm(50, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> PistonSpeed.rpm(Double.NaN, 1));
    }
}
