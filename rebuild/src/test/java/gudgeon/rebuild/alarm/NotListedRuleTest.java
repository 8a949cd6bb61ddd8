package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.done;
import static gudgeon.rebuild.alarm.Told.entered;
import static gudgeon.rebuild.alarm.Told.fitted;
import static gudgeon.rebuild.alarm.Told.inPieces;
import static gudgeon.rebuild.alarm.Told.off;
import static gudgeon.rebuild.alarm.Told.together;
import static gudgeon.rebuild.alarm.Told.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotListedRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: gasket, name: head gasket, single-use: true}
              - {id: head, name: head}
            steps:
              - {id: fit-head, name: Fit the head, fits: [gasket, head]}
            """);

    private static List<String> alarms(Fact... facts) {
        return Told.alarms(new NotListedRule(), BOOK, facts).stream()
                .map(Alarm::at)
                .toList();
    }

    @Test
    void seesWhatOpeningAgainDestroyed() {
        assertThat(alarms(together(), undone("fit-head"))).containsExactly("gasket");
        assertThat(alarms(
                        inPieces(),
                        entered("new", "gasket", Origin.ORIGINAL),
                        fitted("gasket", "new", 1),
                        done("fit-head"),
                        off("gasket")))
                .containsExactly("gasket");
    }

    @Test
    void isSilentOnceItIsListedOrInHand() {
        assertThat(alarms(together(), undone("fit-head", "gasket"))).isEmpty();
        assertThat(alarms(together(), undone("fit-head"), new Sourcing.Ordered("A", "gasket", 1, "", "")))
                .isEmpty();
        assertThat(alarms(together(), entered("spare", "gasket", Origin.ORIGINAL), undone("fit-head")))
                .isEmpty();
        assertThat(alarms(together(), new Sourcing.Arrived("A", "gasket", 1, ""), undone("fit-head")))
                .isEmpty();
    }

    /** At strip-down everyone knows that the gaskets are to be bought. */
    @Test
    void isSilentAtStripDown() {
        assertThat(alarms(together(), off("gasket"))).isEmpty();
    }
}
