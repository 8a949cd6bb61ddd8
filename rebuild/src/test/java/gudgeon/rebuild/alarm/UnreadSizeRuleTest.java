package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.measured;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnreadSizeRuleTest {
    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new UnreadSizeRule(new Fits()), TrialFitRuleTest.BOOK, facts);
    }

    @Test
    void saysThatASizeDoesNotCount() {
        assertThat(alarms(measured("piston", "", "land", "4g.6")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.at()).isEqualTo("piston");
                    assertThat(alarm.what()).contains("land").contains("does not count");
                });
        assertThat(alarms(measured("piston", "", "land", "1.953"))).hasSize(1);
    }

    @Test
    void saysThatSizesCannotGoTogether() {
        assertThat(alarms(measured("piston", "", "crown.dome", "40")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("can't go together"));
    }

    @Test
    void aSizeThatTheBookHasNoFigureForIsJustWrittenDown() {
        assertThat(alarms(measured("piston", "", "skirt", "49.95"))).isEmpty();
        assertThat(alarms(measured("piston", "", "land", "49.61"))).isEmpty();
    }
}
