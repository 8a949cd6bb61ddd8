package gudgeon.rebuild.valvework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.spring.CoilSpring;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SpringAnswerTest {
    private static final CoilSpring SPRING = new CoilSpring(2.8, 20, 6.5, CoilSpring.Ends.CLOSED_GROUND);

    private static SpringAnswer answer(double fitted) {
        return new SpringAnswer(SPRING, OptionalDouble.of(33), OptionalDouble.of(fitted), OptionalDouble.of(8));
    }

    /** 79300 * 2.8^4 / (8 * 20^3 * 4.5) = 16.92 N/mm; solid 6.5 * 2.8 = 18.2 mm. */
    @Test
    void saysForceAndRoom() {
        assertThat(answer(28).rateNPerMm()).isEqualTo(16.924, within(0.001));
        assertThat(answer(28).shutN().orElseThrow()).isEqualTo(5 * 16.924, within(0.01));
        assertThat(answer(28).marginMm().orElseThrow()).isEqualTo(1.8, within(1e-9));
        assertThat(answer(28).sentences())
                .contains("Valve shut it presses with about 85 N.", "At full lift it presses with about 220 N.");
    }

    @Test
    void saysThatCoilsMeet() {
        assertThat(answer(26).sentences())
                .anyMatch(line -> line.startsWith("The coils meet 0.20 mm before full lift."));
    }

    @Test
    void saysOnlyWhatFollows() {
        SpringAnswer alone =
                new SpringAnswer(SPRING, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        assertThat(alone.sentences()).hasSize(2);
        assertThat(alone.shutN()).isEmpty();
        assertThat(alone.marginMm()).isEmpty();
    }
}
