package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.measured;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompressionRuleTest {
    private static List<Alarm> withHeight(String mm) {
        return Told.alarms(
                new CompressionRule(new Fits()),
                TrialFitRuleTest.BOOK,
                entered("copy", "piston", Origin.PATTERN),
                measured("piston", "copy", "compression-height", mm));
    }

    @Test
    void seesCompressionLost() {
        assertThat(withHeight("25.50")).singleElement().satisfies(alarm -> {
            assertThat(alarm.at()).isEqualTo("piston");
            assertThat(alarm.what()).contains("compression ratio falls to").contains(": 1");
        });
    }

    @Test
    void aTenthOfAMillimetreIsNoLoss() {
        assertThat(withHeight("26.90")).isEmpty();
        assertThat(withHeight("27.50")).isEmpty();
    }
}
