package gudgeon.rebuild.build;

import static gudgeon.rebuild.build.SmallBuild.begun;
import static gudgeon.rebuild.build.SmallBuild.build;
import static gudgeon.rebuild.build.SmallBuild.done;
import static gudgeon.rebuild.build.SmallBuild.entered;
import static gudgeon.rebuild.build.SmallBuild.fitted;
import static gudgeon.rebuild.build.SmallBuild.inPieces;
import static gudgeon.rebuild.build.SmallBuild.instead;
import static gudgeon.rebuild.build.SmallBuild.off;
import static gudgeon.rebuild.build.SmallBuild.passed;
import static gudgeon.rebuild.build.SmallBuild.together;
import static gudgeon.rebuild.build.SmallBuild.undone;
import static gudgeon.rebuild.build.SmallBuild.wrong;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Why a fact is not taken down, in sentences. */
class RefusalsTest {
    private static final Build TOGETHER = build(together());
    private static final Build IN_PIECES = build(inPieces());

    private static List<String> of(Fact fact) {
        return Refusals.of(TOGETHER, fact);
    }

    @Test
    void whatTheBookDoesNotHaveIsRefused() {
        assertThat(of(begun("nothing")))
                .containsExactly("The engine book has no step 'nothing'. Choose one from the list.");
        assertThat(of(passed("nothing")))
                .containsExactly("The engine book has no check 'nothing'. Choose one from the list.");
        for (Fact fact : List.of(
                off("nothing"),
                new Fact.Cleaned("nothing", Cleaning.WASHED, ""),
                new Fact.Disposed("nothing", "", Disposition.CLEAN, ""),
                fitted("nothing", "", 1),
                new Sourcing.Ordered("", "nothing", 1, "", ""),
                new Sourcing.Arrived("", "nothing", 1, ""))) {
            assertThat(of(fact))
                    .containsExactly("The engine book has no position 'nothing'. Choose one from the list.");
        }
        assertThat(of(new Fact.FaultFound("nothing", "noise"))).hasSize(1);
    }

    @Test
    void aHoldPointStopsAStepUntilItPassedOrWasWaived() {
        assertThat(Refusals.of(IN_PIECES, begun("close-case")))
                .containsExactly("Hold point before 'Close the crankcase': Every gear by hand. Do it first, or say why"
                        + " you go on without it.");
        assertThat(Refusals.of(SmallBuild.after(IN_PIECES, passed("gears-by-hand")), begun("close-case")))
                .isEmpty();
        Fact waived = new Fact.CheckWaived("gears-by-hand", "the box was never apart");
        assertThat(Refusals.of(SmallBuild.after(IN_PIECES, waived), begun("close-case")))
                .isEmpty();
    }

    @Test
    void onlyWhatIsTogetherAndUncoveredCanBeUndone() {
        assertThat(Refusals.of(IN_PIECES, undone("fit-barrel")))
                .containsExactly("The step 'Fit the barrel' is not done, so it can't be undone.");
        assertThat(of(undone("fit-piston")))
                .containsExactly("'Fit the barrel' still stands over 'Fit the piston'. Undo it first.");
        assertThat(of(undone("fit-barrel"))).isEmpty();
        // begun, stopped, or half of it off: there is something to take off still
        assertThat(Refusals.of(SmallBuild.after(IN_PIECES, begun("fit-barrel")), undone("fit-barrel")))
                .isEmpty();
        Build stopped = SmallBuild.after(IN_PIECES, begun("fit-barrel"), new Fact.StepStopped("fit-barrel", "tea"));
        assertThat(Refusals.of(stopped, undone("fit-barrel"))).isEmpty();
        assertThat(Refusals.of(SmallBuild.after(TOGETHER, off("barrel")), undone("fit-barrel")))
                .isEmpty();
    }

    @Test
    void aPartMustBeEnteredBeforeItIsMeasuredComparedOrFitted() {
        String sentence = "No part 'pattern' is entered for 'piston'. Enter it first.";
        Map<String, String> sizes = Map.of("land", "5.0");
        assertThat(of(new Fact.Measured("piston", "pattern", sizes))).containsExactly(sentence);
        assertThat(of(new Fact.Compared("piston", "pattern", List.of("height"), true, "")))
                .containsExactly(sentence);
        assertThat(of(fitted("piston", "pattern", 1))).containsExactly(sentence);
        assertThat(of(new Fact.Measured("piston", "", sizes))).isEmpty();
        Build entered = SmallBuild.after(TOGETHER, entered("pattern", "piston", 1));
        assertThat(Refusals.of(entered, fitted("piston", "pattern", 1))).isEmpty();
    }

    @Test
    void twoPartsOfAPositionCanNotHaveOneName() {
        Build entered = SmallBuild.after(TOGETHER, entered("pattern", "piston", 1));
        assertThat(Refusals.of(entered, entered("pattern", "piston", 2)))
                .containsExactly("A part 'pattern' is entered already for 'piston'. Give this one another name.");
        // put right, it is the same part
        assertThat(Refusals.of(entered, instead(2, entered("pattern", "piston", 2))))
                .isEmpty();
        assertThat(of(entered("", "piston", 1))).hasSize(1);
    }

    @Test
    void whatMustBeSaidIsAskedFor() {
        assertThat(of(new Fact.CheckWaived("turns", " "))).hasSize(1);
        assertThat(of(new Fact.StepStopped("fit-barrel", ""))).hasSize(1);
        assertThat(of(new Fact.FaultFound("piston", ""))).containsExactly("Write what is wrong.");
        assertThat(of(new Fact.Noted("", ""))).containsExactly("Write the note.");
        assertThat(of(new Fact.Noted("", "x".repeat(2001))))
                .containsExactly("That is longer than 2000 letters. Shorten it.");
        assertThat(of(new Fact.Measured("piston", "", Map.of()))).hasSize(1);
        assertThat(of(new Fact.Compared("piston", "", List.of(), true, ""))).hasSize(1);
        assertThat(of(new Fact.WentTight(OptionalDouble.empty(), OptionalDouble.empty(), "")))
                .hasSize(1);
    }

    @Test
    void figuresOutsideTheirSpanAreRefused() {
        assertThat(of(new Fact.TakenOff("barrel", 0, "", "", ""))).containsExactly("A count is 1 to 999, not 0.");
        assertThat(of(fitted("barrel", "", 1000))).hasSize(1);
        assertThat(of(new Fact.TimeSpent("", 0))).hasSize(1);
        assertThat(of(new Fact.TimeSpent("", 1441))).hasSize(1);
        assertThat(of(new Fact.ChanceTaken(Origin.USED, 1.5))).hasSize(1);
        assertThat(of(new Fact.ChanceTaken(Origin.USED, Double.NaN))).hasSize(1);
        assertThat(of(new Fact.WentTight(OptionalDouble.of(720), OptionalDouble.of(-1), "")))
                .hasSize(2);
        assertThat(of(new Fact.WentTight(OptionalDouble.of(719.9), OptionalDouble.empty(), "")))
                .isEmpty();
    }

    @Test
    void aCorrectionIsOfAnEntryThatIsThereAndSaysWhy() {
        assertThat(of(wrong(9)))
                .containsExactly("There is no such entry in this journal. Choose it from the journal's page.");
        assertThat(of(new Fact.Corrected("e1", "", Optional.empty()))).containsExactly("Write why the entry is wrong.");
        assertThat(of(instead(1, off("nothing")))).hasSize(1);
    }

    @Test
    void allReasonsAreToldAtOnce() {
        assertThat(of(new Fact.PartEntered(" ", "nothing", Origin.MADE, 0, ""))).hasSize(3);
    }

    @Test
    void nothingIsHeldAgainstWhatIsInOrder() {
        for (Fact fact : List.of(
                off("cover"),
                done("fit-barrel"),
                new Fact.Cleaned("case", Cleaning.BLASTED, ""),
                new Fact.TimeSpent("", 30),
                new Fact.FaultFound("fit-barrel", "no gasket"),
                wrong(1))) {
            assertThat(of(fact)).isEmpty();
        }
    }
}
