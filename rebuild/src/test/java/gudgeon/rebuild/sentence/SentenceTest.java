package gudgeon.rebuild.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SentenceTest {
    @Test
    void timeIsReadAsHoursAndMinutes() {
        assertThat(Amount.time(45)).isEqualTo("45 min");
        assertThat(Amount.time(60)).isEqualTo("1 h");
        assertThat(Amount.time(1500)).isEqualTo("25 h");
        assertThat(Amount.time(95)).isEqualTo("1 h 35 min");
    }

    @Test
    void aNumberGoesWithItsNoun() {
        assertThat(Amount.of(1, "step")).isEqualTo("1 step");
        assertThat(Amount.of(0, "step")).isEqualTo("0 steps");
        assertThat(Amount.of(1, "entry", "entries")).isEqualTo("1 entry");
        assertThat(Amount.of(2, "entry", "entries")).isEqualTo("2 entries");
    }

    @Test
    void aListEndsInAnd() {
        assertThat(Sentence.list(List.of())).isEmpty();
        assertThat(Sentence.list(List.of("a"))).isEqualTo("a");
        assertThat(Sentence.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    }

    @Test
    void aTextBecomesASentenceOnce() {
        assertThat(Sentence.of("tried by hand")).isEqualTo("Tried by hand.");
        assertThat(Sentence.of("Is it dry?")).isEqualTo("Is it dry?");
        assertThat(Sentence.of("")).isEmpty();
    }
}
