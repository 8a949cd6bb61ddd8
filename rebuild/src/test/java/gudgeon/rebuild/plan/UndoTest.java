package gudgeon.rebuild.plan;

import static gudgeon.rebuild.plan.SmallBook.book;
import static gudgeon.rebuild.plan.SmallBook.done;
import static gudgeon.rebuild.plan.SmallBook.fitted;
import static gudgeon.rebuild.plan.SmallBook.inPieces;
import static gudgeon.rebuild.plan.SmallBook.passed;
import static gudgeon.rebuild.plan.SmallBook.together;
import static gudgeon.rebuild.plan.SmallBook.told;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a fault undoes. */
class UndoTest {
    private static List<String> ids(List<Step> steps) {
        return steps.stream().map(Step::id).toList();
    }

    /** Built up, all proved, with the parts that were bought for it. */
    private static Build built() {
        return told(
                book(),
                inPieces(),
                new Sourcing.Ordered("first", "base-gasket", 1, "", "3.10"),
                new Fact.PartEntered("base gasket", "base-gasket", Origin.PATTERN, 1, ""),
                done("paint-case"),
                done("lay-case"),
                done("fit-gears"),
                passed("gears-by-hand"),
                done("close-case"),
                done("fit-piston"),
                passed("clips-seen"),
                fitted("base-gasket", "base gasket", 1),
                done("fit-barrel"),
                passed("turns-by-hand"),
                done("set-timing"),
                done("fit-cover"));
    }

    @Test
    void whatCoversAFaultComesOffOutermostFirst() {
        Undo undo = Undo.of(built(), "piston");
        assertThat(ids(undo.off())).containsExactly("fit-barrel", "fit-piston");
        assertThat(ids(undo.again())).containsExactly("set-timing");
        assertThat(undo.voidChecks()).containsExactlyInAnyOrder("clips-seen", "turns-by-hand");
        assertThat(undo.buy())
                .containsExactly(new Buy("base-gasket", "base gasket", 1, "3.10"), new Buy("clips", "circlips", 2, ""));
        assertThat(undo.minutesOff()).isEqualTo(20);
        assertThat(undo.minutesBack()).isEqualTo(15 + 25 + 10 + 1 + 2);
        assertThat(undo.back())
                .containsExactly("fit-piston", "clips-seen", "fit-barrel", "turns-by-hand", "set-timing");
    }

    @Test
    void whatIsWrittenLeavesTheBuildAsItWasForetold() {
        Build built = built();
        Undo undo = Undo.of(built, "piston");
        List<Fact.Undone> facts = undo.facts("a ring broke");
        assertThat(facts).extracting(Fact.Undone::step).containsExactly("set-timing", "fit-barrel", "fit-piston");
        assertThat(facts.get(1).toBuy()).containsExactly("base-gasket");
        Build after = told(built, facts.toArray(Fact[]::new));
        assertThat(undo.voidChecks())
                .allSatisfy(check -> assertThat(after.check(check).status()).isEqualTo(CheckState.Status.VOID));
        assertThat(after.check("gears-by-hand").status()).isEqualTo(CheckState.Status.PASSED);
        assertThat(after.place("base-gasket").supply().listed()).isPositive();
        assertThat(Undo.of(after, "piston").off()).isEmpty();
    }

    @Test
    void aSpareInHandIsNotBought() {
        Build spare = told(built(), new Fact.PartEntered("spare clips", "clips", Origin.ORIGINAL, 2, ""));
        assertThat(Undo.of(spare, "piston").buy()).extracting(Buy::position).containsExactly("base-gasket");
    }

    @Test
    void aCheckThatFailedLeadsToItsSuspectsAndIsDoneAgain() {
        Build failed = told(built(), new Fact.CheckFailed("gears-by-hand", "", "no third gear"));
        Undo undo = Undo.of(failed, "gears-by-hand");
        assertThat(ids(undo.off())).containsExactly("close-case", "fit-gears");
        assertThat(undo.back()).containsExactly("fit-gears", "gears-by-hand", "close-case");
    }

    @Test
    void onlyWhatStandsComesOff() {
        Undo undo = Undo.of(told(built(), new Fact.Undone("fit-barrel", "", List.of())), "piston");
        assertThat(ids(undo.off())).containsExactly("fit-piston");
    }

    @Test
    void aForgottenPartIsGotAtThroughItsCoversOnly() {
        Build forgotten = told(book(), inPieces(), done("paint-case"), done("lay-case"), done("close-case"));
        assertThat(ids(Undo.of(forgotten, "drum").off())).containsExactly("close-case");
    }

    @Test
    void theSentencesNameStepsChecksPartsAndTime() {
        assertThat(Undo.of(built(), "piston").sentences())
                .containsExactly(
                        "To get at 'piston', undo 2 steps: 'Fit the barrel' and 'Fit the piston'.",
                        "Done on what comes off, so to be done again: 'Set the timing'.",
                        "2 checks become void: 'Both circlips seen in their grooves' and 'Two turns by hand'.",
                        "Destroyed and to be bought: base gasket (last price 3.10) and 2 of circlips.",
                        "Work lost: about 20 min taking off and 53 min putting back and proving again. Taking off is taken"
                                + " as half of putting on: common practice, no source.");
    }

    @Test
    void anEngineThatIsTogetherCanBeUndoneToo() {
        assertThat(ids(Undo.of(told(book(), together()), "drum").off())).containsExactly("close-case", "fit-gears");
    }

    @Test
    void anUnknownIdIsRefused() {
        assertThatThrownBy(() -> Undo.of(built(), "sump")).isInstanceOf(IllegalArgumentException.class);
    }
}
