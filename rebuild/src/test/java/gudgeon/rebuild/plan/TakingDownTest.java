package gudgeon.rebuild.plan;

import static gudgeon.rebuild.plan.SmallBook.book;
import static gudgeon.rebuild.plan.SmallBook.inPieces;
import static gudgeon.rebuild.plan.SmallBook.off;
import static gudgeon.rebuild.plan.SmallBook.together;
import static gudgeon.rebuild.plan.SmallBook.told;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes off next at strip-down. */
class TakingDownTest {
    private static List<String> next(Build build) {
        return TakingDown.of(build).next().stream().map(Off::position).toList();
    }

    @Test
    void whatWentOnLastComesOffFirstAndNothingFromUnderACover() {
        Build whole = told(book(), together());
        assertThat(next(whole)).containsExactly("cover", "barrel", "base-gasket", "case-screws", "case-gasket", "case");
        assertThat(TakingDown.of(whole).next().get(3))
                .isEqualTo(new Off("case-screws", "crankcase screws", 8, "close-case"));
    }

    @Test
    void aCoverOfWhichPartIsStillOnCovers() {
        Build half = told(book(), together(), off("barrel", "1"));
        assertThat(next(half)).contains("base-gasket").doesNotContain("piston", "barrel");
        assertThat(next(told(half, off("base-gasket", "1")))).contains("piston", "clips");
    }

    @Test
    void nothingComesOffWhatIsInPieces() {
        assertThat(next(told(book(), inPieces()))).isEmpty();
    }

    @Test
    void theNextBagFollowsTheOneUsedLast() {
        Build whole = told(book(), together());
        assertThat(TakingDown.suggestedBag(whole)).isEqualTo("1");
        assertThat(bagAfter("9")).isEqualTo("10");
        assertThat(bagAfter("A07")).isEqualTo("A08");
        assertThat(bagAfter("C")).isEqualTo("D");
        assertThat(bagAfter("tray Z")).isEqualTo("tray Z 2");
        assertThat(TakingDown.suggestedBag(told(whole, off("cover", "3"), off("barrel", "2"))))
                .isEqualTo("4");
    }

    private static String bagAfter(String bag) {
        return TakingDown.suggestedBag(told(book(), together(), off("cover", bag)));
    }
}
