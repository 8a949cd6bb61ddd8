package gudgeon.mechanics.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SmallestChangeTest {
    @Property
    void findsTheFirstStepThatIsEnough(
            @ForAll @DoubleRange(min = -5, max = 5) double from, @ForAll @IntRange(min = 1, max = 40) int wanted) {
        double enough = from + 0.1 * wanted - 0.05;
        assertThat(SmallestChange.find(from, 0.1, 40, to -> to >= enough).orElseThrow())
                .isCloseTo(from + 0.1 * wanted, within(1e-9));
    }

    @Property
    void findsDownwardsToo(@ForAll @IntRange(min = 1, max = 40) int wanted) {
        double enough = 3 - 0.1 * wanted + 0.05;
        assertThat(SmallestChange.find(3, -0.1, 40, to -> to <= enough).orElseThrow())
                .isCloseTo(3 - 0.1 * wanted, within(1e-9));
    }

    @Test
    void findsNothingWhereTheGreatestChangeIsNotEnough() {
        assertThat(SmallestChange.find(0, 0.1, 10, to -> to > 1.05)).isEmpty();
    }

    @Test
    void refusesNoStep() {
        assertThatThrownBy(() -> SmallestChange.find(0, 0, 10, to -> true))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SmallestChange.find(0, 1, 0, to -> true)).isInstanceOf(IllegalArgumentException.class);
    }
}
