package gudgeon.mechanics.valvetrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LiftReadingsTest {
    private static final double STEP = 10;

    private static double[] angles() {
        double[] angles = new double[31];
        for (int i = 0; i < angles.length; i++) {
            angles[i] = (i - 15) * STEP;
        }
        return angles;
    }

    private static double[] lifts(LiftLaw law) {
        double[] lifts = new double[31];
        for (int i = 0; i < lifts.length; i++) {
            double rise = law.rise(1 - Math.abs(i - 15) / 15.0);
            lifts[i] = Math.rint(7.5 * rise * 100) / 100;
        }
        return lifts;
    }

    @ParameterizedTest
    @EnumSource(LiftLaw.class)
    void noReadingOfASoundTableJumps(LiftLaw law) {
        assertThat(LiftReadings.of(angles(), lifts(law)).jumps()).isEmpty();
    }

    @Property
    void aMistypedReadingIsFoundAlone(
            @ForAll @IntRange(min = 1, max = 29) int at, @ForAll @DoubleRange(min = 0.15, max = 2) double off) {
        double[] lifts = lifts(LiftLaw.POLYNOMIAL_345);
        lifts[at] += off;
        assertThat(LiftReadings.of(angles(), lifts).jumps()).singleElement().satisfies(jump -> {
            assertThat(jump.index()).isEqualTo(at);
            assertThat(jump.byMm()).isEqualTo(off, within(0.04));
        });
    }

    /** A cubic passes through its own points whatever their spacing, so nothing departs from it. */
    @Property
    void unevenAnglesDoNoHarm(@ForAll @DoubleRange(min = 0.3, max = 0.9) double share) {
        double[] angles = new double[12];
        double[] lifts = new double[12];
        for (int i = 0; i < 12; i++) {
            angles[i] = 10 * i + (i % 2 == 0 ? 0 : 8 * share);
            double x = angles[i] / 60 - 1;
            lifts[i] = 3 + x - x * x - x * x * x;
        }
        assertThat(LiftReadings.of(angles, lifts).jumps()).isEmpty();
    }

    @Test
    void aSlipOfTheGaugeIsNamedAndAnHonestTableIsNot() {
        double[] angles =
                IntStream.rangeClosed(-28, 28).mapToDouble(i -> 5.0 * i).toArray();
        LawLift law = new LawLift(LiftLaw.POLYNOMIAL_345, 260, 6.2);
        double[] honest = Arrays.stream(angles)
                .map(a -> Math.rint(law.mmAt(a) * 100) / 100)
                .toArray();
        assertThat(LiftReadings.of(angles, honest).jumps()).isEmpty();
        assertThat(LiftReadings.of(angles, honest).residualMm()).isLessThan(0.01);
        double[] slipped = honest.clone();
        slipped[20] += 0.3;
        assertThat(LiftReadings.of(angles, slipped).jumps()).hasSize(1).first().satisfies(jump -> {
            assertThat(jump.index()).isEqualTo(20);
            assertThat(jump.byMm()).isCloseTo(0.3, within(0.03));
        });
    }

    @Test
    void aNoisyTableSaysHowNoisy() {
        double[] angles =
                IntStream.rangeClosed(-28, 28).mapToDouble(i -> 5.0 * i).toArray();
        LawLift law = new LawLift(LiftLaw.POLYNOMIAL_345, 260, 6.2);
        SplittableRandom r = new SplittableRandom(3);
        double[] noisy = Arrays.stream(angles)
                .map(a -> Math.max(0, law.mmAt(a) + 0.06 * (r.nextDouble() - 0.5)))
                .toArray();
        assertThat(LiftReadings.of(angles, noisy).residualMm()).isBetween(0.01, 0.04);
        assertThat(LiftReadings.of(angles, noisy).jumps()).isEmpty();
    }
}
