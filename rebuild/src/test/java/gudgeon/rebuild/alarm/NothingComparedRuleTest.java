package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.compared;
import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.fitted;
import static gudgeon.rebuild.alarm.Told.measured;
import static gudgeon.rebuild.alarm.Told.off;
import static gudgeon.rebuild.alarm.Told.together;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;

class NothingComparedRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: pin, name: gudgeon pin, critical: true, compare: [length]}
              - {id: clips, name: circlips}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [pin, clips]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new NothingComparedRule(), BOOK, facts);
    }

    @Test
    void seesACopyGoInUncompared() {
        Fact pin = entered("copy", "pin", Origin.PATTERN);
        assertThat(alarms(pin)).isEmpty();
        assertThat(alarms(pin, begun("fit-piston"))).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.NOTHING_COMPARED);
            assertThat(alarm.at()).isEqualTo("pin");
            assertThat(alarm.todo()).contains("length");
            assertThat(alarm.evidence()).containsExactly(1L, 2L);
        });
        assertThat(alarms(pin, fitted("pin", "copy", 1))).hasSize(1);
        assertThat(alarms(pin, compared("pin", "copy", true, "length"), begun("fit-piston")))
                .isEmpty();
        assertThat(alarms(pin, begun("fit-piston"), measured("pin", "copy", "length", "40.0")))
                .isEmpty();
    }

    @Test
    void trustsTheMakersOwnAndWhatDoesNotMatter() {
        assertThat(alarms(entered("new", "pin", Origin.ORIGINAL), begun("fit-piston")))
                .isEmpty();
        assertThat(alarms(entered("new", "clips", Origin.PATTERN), begun("fit-piston")))
                .isEmpty();
        assertThat(alarms(together(), off("pin"), begun("fit-piston"))).isEmpty();
    }

    @Test
    void saysWhatDoesNotAgreeBeforeItGoesIn() {
        Fact clips = entered("new", "clips", Origin.PATTERN);
        Fact thin = compared("clips", "new", false, "wire diameter");
        assertThat(alarms(clips, thin)).singleElement().satisfies(alarm -> {
            assertThat(alarm.kind()).isEqualTo(AlarmKind.DIFFERS);
            assertThat(alarm.severity()).isEqualTo(Severity.LOOK);
            assertThat(alarm.what()).contains("wire diameter");
        });
        assertThat(alarms(clips, thin, begun("fit-piston")).get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(alarms(clips, thin, compared("clips", "new", true, "wire diameter"), begun("fit-piston")))
                .isEmpty();
    }
}
