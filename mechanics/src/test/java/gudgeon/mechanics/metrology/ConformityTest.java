package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ConformityTest {
    private static final double NORMAL = Double.POSITIVE_INFINITY;

    @Test
    void aBreakdownVoltageBelowItsMost() {
        // JCGM 106:2012, 7.3.2, example 1 (from memory): at most -5.40 V; -5.47 V with u = 0.05 V gives Phi(1.40) =
        // 0.92
        Conformity found = Conformity.of(-5.47, 0.05, NORMAL, ToleranceInterval.atMost(-5.40));
        assertThat(found.inside()).isEqualTo(0.92, within(0.005));
        assertThat(found.zone()).isEqualTo(Zone.UNPROVEN);
    }

    @Test
    void aBurstingStrengthAboveItsLeast() {
        // JCGM 106:2012, 7.3.2, example 2 (from memory): at least 490 kPa; 509.7 kPa with u = 8.6 kPa gives 0.99
        Conformity found = Conformity.of(509.7, 8.6, NORMAL, ToleranceInterval.atLeast(490));
        assertThat(found.inside()).isEqualTo(0.99, within(0.005));
        assertThat(found.zone()).isEqualTo(Zone.IN);
    }

    @Test
    void aValueOneGuardBandInside() {
        // the normal integral, Phi(1.645) = 0.9500 (Abramowitz and Stegun, table 26.1): a value 1.645 u inside the
        // limit
        Conformity found = Conformity.of(60 - 1.645, 1, NORMAL, ToleranceInterval.atMost(60));
        assertThat(found.inside()).isEqualTo(0.9500, within(0.00005));
        assertThat(found.above()).isEqualTo(0.0500, within(0.00005));
        assertThat(found.below()).isZero();
    }

    @Test
    void aShaftBetweenTwoLimits() {
        // Phi(1) - Phi(-3) = 0.84134 - 0.00135 (Abramowitz and Stegun, table 26.1)
        Conformity found = Conformity.of(10.003, 0.001, NORMAL, new ToleranceInterval(10.000, 10.004));
        assertThat(found.inside()).isEqualTo(0.83999, within(0.00001));
        assertThat(found.zone()).isEqualTo(Zone.UNPROVEN);
    }

    @Test
    void fewReadingsProveLess() {
        // Student's t with 2 degrees of freedom exceeds 2.920 in 5 % (JCGM 100:2008, table G.2), the normal 1.645
        ToleranceInterval limit = ToleranceInterval.atMost(0);
        assertThat(Conformity.of(-2.91, 1, 2, limit).zone()).isEqualTo(Zone.UNPROVEN);
        assertThat(Conformity.of(-2.93, 1, 2, limit).zone()).isEqualTo(Zone.IN);
        assertThat(Conformity.of(-1.66, 1, NORMAL, limit).zone()).isEqualTo(Zone.IN);
        assertThat(Conformity.of(2.93, 1, 2, limit).zone()).isEqualTo(Zone.OUT);
    }

    @Test
    void withoutDoubtTheLimitItselfIsWithin() {
        ToleranceInterval limits = new ToleranceInterval(1, 2);
        assertThat(Conformity.of(Quantity.exact(2), limits).inside()).isEqualTo(1);
        assertThat(Conformity.of(Quantity.exact(Math.nextUp(2)), limits).above())
                .isEqualTo(1);
        assertThat(Conformity.of(Quantity.exact(0.5), limits).below()).isEqualTo(1);
    }

    @Test
    void aDoubtAsWideAsTheLimitsProvesNothingWithinThem() {
        ToleranceInterval limits = new ToleranceInterval(39.000, 39.015);
        Conformity middle = Conformity.of(Quantity.read(39.0075, 0.02, 0.03), limits);
        assertThat(middle.zone()).isEqualTo(Zone.UNPROVEN);
        assertThat(Conformity.of(Quantity.read(39.0075, 0.001, 0.003), limits).zone())
                .isEqualTo(Zone.IN);
    }

    @Property
    void theThreeAddUpAndMirror(
            @ForAll @DoubleRange(min = -5, max = 5) double value,
            @ForAll @DoubleRange(min = 0.01, max = 3) double u,
            @ForAll @DoubleRange(min = 1, max = 200) double freedom) {
        Conformity found = Conformity.of(value, u, freedom, new ToleranceInterval(-1, 1));
        Conformity mirrored = Conformity.of(-value, u, freedom, new ToleranceInterval(-1, 1));
        assertThat(found.below() + found.inside() + found.above()).isEqualTo(1, within(1e-12));
        assertThat(found.below()).isEqualTo(mirrored.above(), within(1e-12));
    }

    @Property
    void furtherInsideIsNeverLessSure(
            @ForAll @DoubleRange(min = -5, max = 5) double value,
            @ForAll @DoubleRange(min = 0, max = 2) double further,
            @ForAll @DoubleRange(min = 0.01, max = 3) double u) {
        ToleranceInterval limit = ToleranceInterval.atMost(0);
        double near = Conformity.of(value, u, 5, limit).inside();
        assertThat(Conformity.of(value - further, u, 5, limit).inside()).isGreaterThanOrEqualTo(near - 1e-12);
    }

    @Property
    void theLessTheDoubtTheSurerTheTruth(
            @ForAll @DoubleRange(min = 0.01, max = 2) double room, @ForAll @DoubleRange(min = 0.01, max = 3) double u) {
        ToleranceInterval limit = ToleranceInterval.atMost(0);
        double more = Conformity.of(-room, u, NORMAL, limit).inside();
        assertThat(Conformity.of(-room, u / 2, NORMAL, limit).inside()).isGreaterThanOrEqualTo(more);
        assertThat(Conformity.of(-room, room / 40, NORMAL, limit).inside()).isEqualTo(1, within(1e-12));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new ToleranceInterval(2, 1)).hasMessageContaining("2.0 to 1.0");
        assertThatThrownBy(() -> new Conformity(0, 1, 0).zone(0.4)).hasMessageContaining("0.5");
        assertThatThrownBy(() -> Conformity.of(1, 1, 0, ToleranceInterval.atMost(2)))
                .hasMessageContaining("freedom");
    }
}
