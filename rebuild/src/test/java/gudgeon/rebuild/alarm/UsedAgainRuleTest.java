package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
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

class UsedAgainRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: gasket, name: head gasket, single-use: true}
              - {id: head, name: head}
            steps:
              - {id: fit-head, name: Fit the head, fits: [gasket, head]}
            """);

    private static List<Alarm> alarms(Fact... facts) {
        return Told.alarms(new UsedAgainRule(), BOOK, facts);
    }

    @Test
    void seesTheOldOneGoInAgain() {
        assertThat(alarms(together(), off("gasket"))).isEmpty();
        assertThat(alarms(together(), off("gasket"), begun("fit-head")))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("about to go in again"));
        assertThat(alarms(together(), off("gasket"), begun("fit-head"), fitted("gasket", "", 1)))
                .singleElement()
                .satisfies(alarm -> assertThat(alarm.what()).contains("went in again"));
        assertThat(alarms(inPieces(), entered("spare", "gasket", Origin.USED), begun("fit-head")))
                .hasSize(1);
    }

    @Test
    void isSilentWithANewOne() {
        Fact part = entered("new", "gasket", Origin.PATTERN);
        assertThat(alarms(together(), off("gasket"), part, begun("fit-head"))).isEmpty();
        assertThat(alarms(together(), off("gasket"), part, begun("fit-head"), fitted("gasket", "new", 1)))
                .isEmpty();
        assertThat(alarms(together(), begun("fit-head"))).isEmpty();
        assertThat(alarms(inPieces(), begun("fit-head"))).isEmpty();
    }

    @Test
    void whatCameByOrderIsNewEvenWithoutAName() {
        Fact came = new Sourcing.Arrived("A", "gasket", 1, "");
        assertThat(alarms(together(), off("gasket"), came, begun("fit-head"))).isEmpty();
        Fact[] in = {together(), off("gasket"), came, begun("fit-head"), fitted("gasket", "", 1), done("fit-head")};
        assertThat(alarms(in)).isEmpty();
        assertThat(alarms(in[0], in[1], in[2], in[3], in[4], in[5], undone("fit-head"), begun("fit-head")))
                .hasSize(1);
    }
}
