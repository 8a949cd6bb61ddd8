package gudgeon.rebuild.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TwoAnswersRuleTest {
    private static Entry entry(String key, String device, long seen, Fact fact) {
        return new Entry(key, Instant.EPOCH, device, seen, fact);
    }

    private static final List<Entry> BOTH = List.of(
            entry("a", "tablet", 0, new Fact.CheckPassed("gears-by-hand", "", "")),
            entry("b", "phone", 0, new Fact.CheckFailed("gears-by-hand", "", "Third jumps out.")));

    @Test
    void seesTwoDevicesSayDifferentThings() {
        Build build = Build.of(HoldPointRuleTest.BOOK).after(BOTH);
        assertThat(new TwoAnswersRule().alarms(build)).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("gears-by-hand");
            assertThat(alarm.evidence()).containsExactly(1L, 2L);
            assertThat(alarm.figures()).anyMatch(figure -> figure.contains("'phone'") && figure.contains("Third"));
        });
    }

    @Test
    void goesWhenOneIsCorrected() {
        Build build = Build.of(HoldPointRuleTest.BOOK)
                .after(BOTH)
                .after(entry("c", "phone", 2, new Fact.Corrected("a", "Ticked by mistake.", Optional.empty())));
        assertThat(new TwoAnswersRule().alarms(build)).isEmpty();
    }
}
