package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.failed;
import static gudgeon.rebuild.alarm.Told.fitted;
import static gudgeon.rebuild.alarm.Told.off;
import static gudgeon.rebuild.alarm.Told.passed;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class HoldPointRuleTest {
    static final EngineBook BOOK = Told.book("""
            positions:
              - {id: drum, name: selector drum}
              - {id: gasket, name: case gasket}
            steps:
              - {id: fit-selector, name: Fit the selector, fits: [drum]}
              - {id: close-case, name: Close the case, fits: [gasket], covers: [drum]}
            checks:
              - {id: gears-by-hand, name: Every gear by hand, how: tried, clears: [drum], holds: [close-case]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new HoldPointRule(), BOOK, facts);
    }

    @Test
    void seesAStepBegunThatACheckHolds() {
        assertThat(alarms(fitted("drum", "", 1), begun("close-case")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.at()).isEqualTo("gears-by-hand");
                    assertThat(alarm.what()).contains("Close the case").contains("Every gear by hand");
                    assertThat(alarm.why()).contains("the selector drum");
                    assertThat(alarm.evidence()).containsExactly(2L);
                });
    }

    @Test
    void letsGoOnceItPassedOrWasWaived() {
        assertThat(alarms(passed("gears-by-hand"), begun("close-case"))).isEmpty();
        assertThat(alarms(begun("close-case"), passed("gears-by-hand"))).isEmpty();
        assertThat(alarms(new Fact.CheckWaived("gears-by-hand", "Tried last week."), begun("close-case")))
                .isEmpty();
    }

    @Test
    void aPassThatIsVoidAgainDoesNotCount() {
        assertThat(alarms(
                        fitted("drum", "", 1),
                        passed("gears-by-hand"),
                        off("drum"),
                        fitted("drum", "", 1),
                        begun("close-case")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("void again"));
    }

    /** That is told by its own rule. */
    @Test
    void leavesAFailedCheckToAnother() {
        assertThat(alarms(failed("gears-by-hand", ""), begun("close-case"))).isEmpty();
    }
}
