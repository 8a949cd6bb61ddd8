package gudgeon.rebuild.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EntryTest {
    private static Entry entry(String key, long seen) {
        return new Entry(key, Instant.EPOCH, "bench", seen, new Fact.Noted("", "note"));
    }

    @Test
    void aKeyIsLettersDigitsAndHyphens() {
        assertThat(entry("tablet-00-A", 0).key()).isEqualTo("tablet-00-A");
        assertThat(entry("k".repeat(Entry.LONGEST_KEY), 0).key()).hasSize(Entry.LONGEST_KEY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "a b", "a/b", "../x", "a\nb", "ä"})
    void anyOtherKeyIsRefused(String key) {
        assertThatIllegalArgumentException().isThrownBy(() -> entry(key, 0));
    }

    @Test
    void aKeyTooLongAndANumberBelowNoneAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> entry("k".repeat(Entry.LONGEST_KEY + 1), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> entry("k", -1));
    }
}
