package gudgeon.rebuild.alarm;

import static gudgeon.rebuild.alarm.Told.begun;
import static gudgeon.rebuild.alarm.Told.done;
import static gudgeon.rebuild.alarm.Told.fitted;
import static gudgeon.rebuild.alarm.Told.inPieces;
import static gudgeon.rebuild.alarm.Told.off;
import static gudgeon.rebuild.alarm.Told.together;
import static gudgeon.rebuild.alarm.Told.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Fact;
import java.util.List;
import org.junit.jupiter.api.Test;

class MissingRuleTest {
    private static final EngineBook BOOK = Told.book("""
            positions:
              - {id: pins, name: selector fork pins, quantity: 2}
              - {id: seal, name: output shaft seal, space: [wet, dry]}
              - {id: dowels, name: dowels}
            steps:
              - {id: fit-selector, name: Fit the selector, fits: [pins, seal]}
              - {id: close-case, name: Close the case, fits: [dowels], covers: [pins, seal, dowels]}
            """);

    private static List<String> alarms(Fact... facts) {
        return Told.alarms(new MissingRule(), BOOK, facts).stream()
                .map(alarm -> alarm.kind().key() + " " + alarm.at())
                .toList();
    }

    @Test
    void seesWhatIsNotInItsPlaceWhenItIsCovered() {
        assertThat(alarms(inPieces(), done("fit-selector"))).isEmpty();
        assertThat(alarms(inPieces(), fitted("pins", "", 1), done("fit-selector"), begun("close-case")))
                .containsExactlyInAnyOrder("part-missing pins", "seal-missing seal");
        assertThat(alarms(inPieces(), fitted("pins", "", 2), fitted("seal", "", 1), begun("close-case")))
                .isEmpty();
    }

    @Test
    void saysHowManyAndInWhichBag() {
        assertThat(Told.alarms(
                        new MissingRule(),
                        BOOK,
                        together(),
                        off("pins"),
                        fitted("pins", "", 1),
                        fitted("seal", "", 1),
                        begun("close-case")))
                .singleElement()
                .satisfies(alarm -> {
                    assertThat(alarm.what()).startsWith("Only 1 of 2 are in: the selector fork pins");
                    assertThat(alarm.todo()).contains("bag 7");
                });
    }

    @Test
    void whatTheStepItselfFitsGoesInUntilItIsDone() {
        Fact[] open = {inPieces(), fitted("pins", "", 2), fitted("seal", "", 1), begun("close-case")};
        assertThat(alarms(open)).isEmpty();
        assertThat(alarms(open[0], open[1], open[2], open[3], done("close-case")))
                .containsExactly("part-missing dowels");
    }

    @Test
    void isSilentOfWhatWasNeverTakenApart() {
        assertThat(alarms(together(), off("dowels"), begun("close-case"))).isEmpty();
    }

    @Test
    void goesWhenTheCoverComesOffAgain() {
        assertThat(alarms(inPieces(), begun("close-case"), undone("close-case")))
                .isEmpty();
    }
}
