package gudgeon.rebuild.plan;

import static gudgeon.rebuild.plan.SmallBook.MORNING;
import static gudgeon.rebuild.plan.SmallBook.book;
import static gudgeon.rebuild.plan.SmallBook.done;
import static gudgeon.rebuild.plan.SmallBook.inPieces;
import static gudgeon.rebuild.plan.SmallBook.off;
import static gudgeon.rebuild.plan.SmallBook.passed;
import static gudgeon.rebuild.plan.SmallBook.together;
import static gudgeon.rebuild.plan.SmallBook.told;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.plan.Reason.Kind;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be done now and what waits for what. */
class PlanTest {
    private static final Instant EVENING = MORNING.plusSeconds(12 * 3600);

    private static List<String> now(Plan plan) {
        return plan.now().stream().map(Doable::id).toList();
    }

    private static Waiting waiting(Plan plan, String id) {
        return plan.waiting().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id + " does not wait"));
    }

    private static List<String> sentences(Plan plan, String id) {
        return waiting(plan, id).reasons().stream().map(Reason::sentence).toList();
    }

    /** Taken down to its last part, and nothing bought. */
    private static Build inBags() {
        return told(
                book(),
                together(),
                off("cover", "1"),
                off("barrel", "2"),
                off("base-gasket", "2"),
                off("piston", "3"),
                off("clips", "3"),
                off("case-screws", "4"),
                off("case-gasket", "4"),
                off("gears", "5"),
                off("drum", "6"),
                off("case", "7"),
                new Fact.Undone("set-timing", "", List.of()),
                new Fact.Undone("paint-case", "", List.of()));
    }

    @Test
    void nothingIsToBeDoneToAnEngineThatIsTogether() {
        Plan plan = Plan.of(told(book(), together()), EVENING);
        assertThat(plan.now()).isEmpty();
        assertThat(plan.waiting()).isEmpty();
        assertThat(plan.progress().all()).isZero();
        assertThat(plan.nextHoldPoint()).isEmpty();
    }

    @Test
    void theFirstStepIsWhatNothingComesBefore() {
        Plan plan = Plan.of(inBags(), EVENING);
        assertThat(now(plan)).containsExactly("paint-case");
        assertThat(plan.now().get(0).why()).isEqualTo("7 steps and 3 checks behind it, 2 h 13 min of work.");
        assertThat(waiting(plan, "lay-case").reasons())
                .containsExactly(new Reason(Kind.STEP, "paint-case", "'Paint the crankcase' is not done yet."));
        assertThat(plan.progress())
                .isEqualTo(new Progress(0, 8, 163, "0 of 8 steps done, about 2 h 43 min of work left."));
    }

    @Test
    void whatStandsOnPaintWaitsUntilItHasDried() {
        Build painted = told(inBags(), done("paint-case"));
        Instant at = painted.entry(painted.size()).at();
        Plan wet = Plan.of(painted, at.plusSeconds(30 * 60));
        assertThat(now(wet)).isEmpty();
        assertThat(waiting(wet, "lay-case").reasons())
                .containsExactly(new Reason(
                        Kind.TIME, "paint-case", "'Paint the crankcase' is done and needs another 1 h 30 min to set."));
        assertThat(now(Plan.of(painted, at.plusSeconds(120 * 60)))).containsExactly("lay-case");
    }

    @Test
    void aCheckThatAStepWaitsForComesBeforeAStepWithMoreBehindIt() {
        Build geared = told(
                inBags(),
                done("paint-case"),
                done("lay-case"),
                done("fit-gears"),
                new Fact.PartEntered("new case gasket", "case-gasket", Origin.PATTERN, 1, ""));
        Plan plan = Plan.of(geared, EVENING);
        assertThat(now(plan)).containsExactly("gears-by-hand");
        assertThat(plan.now().get(0).why()).isEqualTo("'Close the crankcase' waits for it.");
        assertThat(waiting(plan, "close-case").reasons())
                .extracting(Reason::kind)
                .containsExactly(Kind.CHECK);
        assertThat(plan.nextHoldPoint())
                .hasValueSatisfying(check -> assertThat(check.id()).isEqualTo("gears-by-hand"));
        assertThat(now(Plan.of(told(geared, passed("gears-by-hand")), EVENING))).containsExactly("close-case");
    }

    @Test
    void aStepThatWasBegunComesFirst() {
        Build begun = told(
                inBags(), done("paint-case"), done("lay-case"), done("fit-gears"), new Fact.StepBegun("fit-cover"));
        assertThat(now(Plan.of(begun, EVENING)).get(0)).isEqualTo("fit-cover");
    }

    @Test
    void aStepWaitsForAPartThatCanNotBeUsedAgain() {
        Build closing =
                told(inBags(), done("paint-case"), done("lay-case"), done("fit-gears"), passed("gears-by-hand"));
        String spent = "The crankcase gasket that came off can't be used again";
        assertThat(sentences(Plan.of(closing, EVENING), "close-case")).containsExactly(spent + ".");
        Build ordered = told(closing, new Sourcing.Ordered("first", "case-gasket", 1, "", "4.20"));
        assertThat(sentences(Plan.of(ordered, EVENING), "close-case"))
                .containsExactly(spent + "; 1 ordered and not come yet.");
        Build came = told(ordered, new Sourcing.Arrived("first", "case-gasket", 1, ""));
        assertThat(now(Plan.of(came, EVENING))).contains("close-case");
    }

    @Test
    void halfOfAPairIsNotEnough() {
        Build one = told(inBags(), new Fact.PartEntered("clips", "clips", Origin.ORIGINAL, 1, ""));
        assertThat(sentences(Plan.of(one, EVENING), "fit-piston"))
                .containsExactly("'Close the crankcase' is not done yet.", "Not all in hand: circlips, 1 of 2.");
    }

    @Test
    void aPartToBeReplacedIsNotInHand() {
        Build scored = told(inBags(), new Fact.Disposed("barrel", "", Disposition.REPLACE, "scored"));
        assertThat(sentences(Plan.of(scored, EVENING), "fit-barrel"))
                .contains("The barrel that came off is to be replaced.");
    }

    @Test
    void anEngineInPiecesWaitsForEveryPart() {
        Plan plan = Plan.of(told(book(), inPieces(), done("paint-case")), EVENING);
        assertThat(now(plan)).isEmpty();
        assertThat(sentences(plan, "lay-case")).containsExactly("Not in hand: crankcase halves.");
    }

    @Test
    void aCheckOfAPartInTheHandWaitsForThePart() {
        EngineBook book = book("""
                book: 1
                engine: {name: Tarn 98, maker: Merrow & Tull}
                positions: [{id: piston, name: piston}]
                steps: [{id: fit-piston, name: Fit the piston, fits: [piston]}]
                checks: [{id: piston-compared, name: Piston compared, how: seen, clears: [piston], holds: [fit-piston]}]
                """);
        Build empty = told(book, inPieces());
        assertThat(sentences(Plan.of(empty, EVENING), "piston-compared")).containsExactly("Not in hand: piston.");
        Build came = told(empty, new Fact.PartEntered("new", "piston", Origin.PATTERN, 1, ""));
        assertThat(now(Plan.of(came, EVENING))).containsExactly("piston-compared");
    }

    @Test
    void whatIsOnlySeenCanNotBeSeenUnderACover() {
        Build closed = told(
                inBags(),
                done("paint-case"),
                done("lay-case"),
                done("fit-gears"),
                passed("gears-by-hand"),
                done("close-case"),
                done("fit-piston"));
        Plan open = Plan.of(closed, EVENING);
        assertThat(now(open)).contains("clips-seen");
        Plan under = Plan.of(told(closed, done("fit-barrel")), EVENING);
        assertThat(sentences(under, "clips-seen"))
                .containsExactly("'Fit the barrel' covers circlips and would have to be undone first.");
        assertThat(now(under)).contains("turns-by-hand");
    }

    @Test
    void aCheckMadeVoidIsLeftAgain() {
        Build disturbed = told(
                inBags(),
                done("paint-case"),
                done("lay-case"),
                done("fit-gears"),
                passed("gears-by-hand"),
                new Fact.Undone("fit-gears", "drum chipped", List.of()),
                done("fit-gears"));
        Plan plan = Plan.of(disturbed, EVENING);
        assertThat(now(plan)).containsExactly("gears-by-hand");
        assertThat(plan.now().get(0).why()).startsWith("It passed once, and what it relied on was disturbed since.");
    }
}
