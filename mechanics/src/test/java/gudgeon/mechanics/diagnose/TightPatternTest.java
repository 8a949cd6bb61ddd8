package gudgeon.mechanics.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.diagnose.TightPattern.Pair;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class TightPatternTest {
    private static final TightPattern AT =
            TightPattern.at(List.of(new Pair(3, 340, 365), new Pair(1, 345, 360)), false);

    private static FeltAngle felt(double deg) {
        return FeltAngle.of(true, deg, 4, true);
    }

    /** Of two pairs and one reading it is a mixture of two normals and the slips, here by another library's normal. */
    @Test
    void isTheMixtureOfItsPairs() {
        double bell =
                0.75 * new NormalDistribution(340, 4).density(338) + 0.25 * new NormalDistribution(345, 4).density(338);
        double expected = (1 - TightPattern.SLIP) * bell + TightPattern.SLIP / 720;
        assertThat(AT.logDensity(List.of(felt(338)))).isCloseTo(Math.log(expected), within(1e-9));
    }

    /** A density integrates to 1 over its circle, whichever pattern and whether the stroke is known or not. */
    @Test
    void integratesToOne() {
        for (TightPattern pattern : List.of(
                AT,
                TightPattern.anywhere(),
                TightPattern.symmetric(0, 0, 35, true),
                TightPattern.symmetric(0, 5, 120, false),
                TightPattern.atSomeAngle(60))) {
            for (boolean strokeKnown : new boolean[] {true, false}) {
                double sum = 0;
                for (int deg = 0; deg < (strokeKnown ? 720 : 360); deg++) {
                    sum += Math.exp(pattern.logDensity(List.of(FeltAngle.of(false, deg, 5, strokeKnown))));
                }
                assertThat(sum).isCloseTo(1, within(1e-6));
            }
        }
    }

    @Property
    void nothingChangesByAWholeCycle(@ForAll @DoubleRange(min = -2000, max = 2000) double deg) {
        assertThat(AT.logDensity(List.of(felt(deg)))).isCloseTo(AT.logDensity(List.of(felt(deg + 720))), within(1e-6));
        FeltAngle half = FeltAngle.of(true, deg, 4, false);
        assertThat(AT.logDensity(List.of(half)))
                .isCloseTo(AT.logDensity(List.of(FeltAngle.of(true, deg + 360, 4, false))), within(1e-6));
    }

    @Property
    void theOrderOfReadingsDoesNotMatter(
            @ForAll @DoubleRange(min = 0, max = 719) double one, @ForAll @DoubleRange(min = 0, max = 719) double two) {
        FeltAngle back = FeltAngle.of(false, two, 4, true);
        assertThat(AT.logDensity(List.of(felt(one), back)))
                .isCloseTo(AT.logDensity(List.of(back, felt(one))), within(1e-9));
    }

    /** Mirrored, what is tight forward is tight backward. */
    @Property
    void aSymmetricPatternHasNoHand(@ForAll @DoubleRange(min = 0, max = 359) double deg) {
        TightPattern pattern = TightPattern.symmetric(0, 0, 180, true);
        assertThat(pattern.logDensity(List.of(FeltAngle.of(true, deg, 4, true))))
                .isCloseTo(pattern.logDensity(List.of(FeltAngle.of(false, 720 - deg, 4, true))), within(1e-9));
    }

    @Property
    void fartherFromItsAngleIsLessLikely(
            @ForAll @DoubleRange(min = 0, max = 100) double near,
            @ForAll @DoubleRange(min = 0, max = 100) double more) {
        TightPattern one = TightPattern.at(List.of(new Pair(1, 340, 360)), false);
        assertThat(one.logDensity(List.of(felt(340 + near + more))))
                .isLessThanOrEqualTo(one.logDensity(List.of(felt(340 + near))) + 1e-12);
    }

    @Test
    void refusesWhatCantBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> TightPattern.at(List.of(), true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Pair(0, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> TightPattern.symmetric(0, 5, 181, true));
        assertThatIllegalArgumentException().isThrownBy(() -> TightPattern.atSomeAngle(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new FeltAngle(true, 400, 3, 360));
        assertThatIllegalArgumentException().isThrownBy(() -> FeltAngle.of(true, 40, 0, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new FeltAngle(true, 40, 3, 500));
    }
}
