package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.done;
import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.passed;
import static gudgeon.rebuild.alarm.Told.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class FailedCheckRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: rings, name: rings}
              - {id: barrel, name: barrel}
              - {id: head, name: head}
            steps:
              - {id: fit-rings, name: Fit the rings, fits: [rings]}
              - {id: fit-barrel, name: Fit the barrel, fits: [barrel], covers: [rings]}
              - {id: fit-head, name: Fit the head, fits: [head], covers: [barrel]}
            checks:
              - {id: ring-gaps, name: Ring gaps, how: measured, clears: [rings]}
              - {id: leak-down, name: Leak-down, how: measured, clears: [rings], with: [head], late: It needs the head.}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new FailedCheckRule(), BOOK, facts);
    }

    @Test
    void seesWorkGoOnPastAFailedCheck() {
        assertThat(alarms(failed("ring-gaps", "0.05 mm"))).isEmpty();
        assertThat(alarms(failed("ring-gaps", "0.05 mm"), begun("fit-barrel")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.at()).isEqualTo("ring-gaps");
                    assertThat(alarm.what()).contains("Fit the barrel");
                    assertThat(alarm.evidence()).containsExactly(1L, 2L);
                });
        assertThat(alarms(begun("fit-barrel"), failed("ring-gaps", ""), done("fit-barrel")))
                .hasSize(1);
    }

    @Test
    void isSilentWhileItStopsThereOrOnceItPassed() {
        assertThat(alarms(begun("fit-barrel"), failed("ring-gaps", ""))).isEmpty();
        assertThat(alarms(failed("ring-gaps", ""), passed("ring-gaps"), begun("fit-barrel")))
                .isEmpty();
        assertThat(alarms(failed("ring-gaps", ""), begun("fit-barrel"), undone("fit-barrel")))
                .isEmpty();
    }

    /** A late check fails when its suspects have long been covered: nothing went on past it. */
    @Test
    void doesNotBlameTheStepsBeforeIt() {
        assertThat(alarms(done("fit-barrel"), done("fit-head"), failed("leak-down", "60 %")))
                .isEmpty();
    }
}
