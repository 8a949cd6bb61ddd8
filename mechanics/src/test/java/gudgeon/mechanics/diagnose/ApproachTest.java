package gudgeon.mechanics.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class ApproachTest {
    /** A gap that falls evenly by 0.1 mm a degree to {@code least} at 350 degrees, and rises again. */
    private static Approach wedge(double least) {
        double[] gap = new double[720];
        Arrays.setAll(gap, i -> least + 0.1 * Math.abs(i - 350));
        return new Approach(gap);
    }

    @Test
    void meetsWhereTheWedgeRunsOut() {
        assertThat(wedge(-1).meetDeg(true, 0)).hasValue(340);
        assertThat(wedge(-1).meetDeg(false, 0)).hasValue(360);
        assertThat(wedge(-1).meetDeg(true, 0.55).getAsDouble()).isCloseTo(334.5, within(1e-9));
        assertThat(wedge(1).meetDeg(true, 0)).isEmpty();
        assertThat(wedge(1).leastMm()).isEqualTo(1);
    }

    /** Turned backward from the bottom, firing top dead centre comes before the other. */
    @Test
    void turnsOnThroughFiringDeadCentre() {
        double[] gap = new double[720];
        Arrays.setAll(gap, i -> i < 10 || i > 710 || Math.abs(i - 360) < 10 ? -1 : 1);
        Approach both = new Approach(gap);
        assertThat(both.meetDeg(true, 0).orElseThrow()).isBetween(350.0, 351.0);
        assertThat(both.meetDeg(false, 0).orElseThrow()).isBetween(9.0, 10.0);
    }

    /** The chance that they meet is the chance that a normal quantity is below 0, here by another library. */
    @Property
    void meetsWithTheChanceOfItsDoubt(@ForAll @DoubleRange(min = -0.3, max = 0.3) double least) {
        double chance = wedge(least).pairs(new GapDoubt(0.1, 0, 1)).stream()
                .mapToDouble(TightPattern.Pair::weight)
                .sum();
        assertThat(chance).isCloseTo(new NormalDistribution(least, 0.1).cumulativeProbability(0), within(0.015));
    }

    @Test
    void aMistakenSizeLetsFarBodiesMeet() {
        assertThat(wedge(1).pairs(new GapDoubt(0.05, 0, 1))).isEmpty();
        double chance = wedge(1).pairs(new GapDoubt(0.05, 0.1, 1)).stream()
                .mapToDouble(TightPattern.Pair::weight)
                .sum();
        assertThat(chance).isCloseTo(0.1 * new NormalDistribution().cumulativeProbability(-1), within(0.001));
    }

    @Property
    void lessRoomMeetsSooner(
            @ForAll @DoubleRange(min = 0, max = 2) double less, @ForAll @DoubleRange(min = 0, max = 2) double more) {
        Approach wedge = wedge(-0.5);
        assertThat(wedge.meetDeg(true, less + more).orElseThrow())
                .isLessThanOrEqualTo(wedge.meetDeg(true, less).orElseThrow() + 1e-9);
        assertThat(wedge.meetDeg(false, less + more).orElseThrow())
                .isGreaterThanOrEqualTo(wedge.meetDeg(false, less).orElseThrow() - 1e-9);
    }

    @Test
    void refusesWhatCantBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Approach(1, 2, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new GapDoubt(-1, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new GapDoubt(1, 2, 0));
    }
}
