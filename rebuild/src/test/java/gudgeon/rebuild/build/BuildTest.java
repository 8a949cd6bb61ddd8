package gudgeon.rebuild.build;

import static gudgeon.rebuild.build.SmallBuild.begun;
import static gudgeon.rebuild.build.SmallBuild.build;
import static gudgeon.rebuild.build.SmallBuild.done;
import static gudgeon.rebuild.build.SmallBuild.entered;
import static gudgeon.rebuild.build.SmallBuild.failed;
import static gudgeon.rebuild.build.SmallBuild.fitted;
import static gudgeon.rebuild.build.SmallBuild.inPieces;
import static gudgeon.rebuild.build.SmallBuild.off;
import static gudgeon.rebuild.build.SmallBuild.passed;
import static gudgeon.rebuild.build.SmallBuild.together;
import static gudgeon.rebuild.build.SmallBuild.undone;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.journal.Cleaning;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import gudgeon.rebuild.journal.Way;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Each fact makes the one change that it is of. */
class BuildTest {
    @Test
    void anEngineFoundTogetherStandsAsFound() {
        Build build = build(together());
        assertThat(build.started()).map(Fact.Started::engine).contains("98-1");
        assertThat(build.step("fit-barrel").status()).isEqualTo(StepState.Status.AS_FOUND);
        assertThat(build.place("piston").status()).isEqualTo(Place.Status.AS_FOUND);
        assertThat(build.check("turns").status()).isEqualTo(CheckState.Status.AS_FOUND);
    }

    @Test
    void anEngineFoundInPiecesHasNothingInPlace() {
        Build build = build(inPieces());
        assertThat(build.step("fit-barrel")).isEqualTo(StepState.OPEN);
        assertThat(build.place("piston")).isEqualTo(Place.EMPTY);
        assertThat(build.partFor("piston")).isEmpty();
    }

    @Test
    void aStepIsBegunDoneAndStopped() {
        Build begun = build(inPieces(), begun("lay-case"));
        assertThat(begun.step("lay-case").status()).isEqualTo(StepState.Status.BEGUN);
        assertThat(begun.step("lay-case").begun()).isEqualTo(2);
        assertThat(begun.step("lay-case").stands()).isFalse();
        Build done = SmallBuild.after(begun, done("lay-case"));
        StepState state = done.step("lay-case");
        assertThat(state.status()).isEqualTo(StepState.Status.DONE);
        assertThat(state.begun()).isEqualTo(2);
        assertThat(state.done()).isEqualTo(3);
        assertThat(state.doneAt()).contains(done.entry(3).at());
        Build stopped = SmallBuild.after(begun, new Fact.StepStopped("lay-case", "no light"));
        assertThat(stopped.step("lay-case").status()).isEqualTo(StepState.Status.STOPPED);
        assertThat(stopped.step("lay-case").why()).isEqualTo("no light");
        assertThat(stopped.step("lay-case").underHand()).isFalse();
    }

    @Test
    void aStepRemembersWhichHoldPointsWereOpenWhenItWasBegun() {
        assertThat(build(inPieces(), done("close-case")).step("close-case").unproven())
                .containsExactly("gears-by-hand");
        Build late = build(inPieces(), begun("close-case"), passed("gears-by-hand"), done("close-case"));
        assertThat(late.step("close-case").unproven()).containsExactly("gears-by-hand");
        Build waived = build(inPieces(), new Fact.CheckWaived("gears-by-hand", "a week's work"), begun("close-case"));
        assertThat(waived.step("close-case").unproven()).isEmpty();
        assertThat(waived.check("gears-by-hand").remark()).isEqualTo("a week's work");
    }

    @Test
    void whatWasTakenOffIsOutAndItsBagKnown() {
        Build build = build(together(), off("cover"));
        Place place = build.place("cover");
        assertThat(place.status()).isEqualTo(Place.Status.OUT);
        assertThat(place.removed()).isEqualTo(2);
        assertThat(place.off()).map(Fact.TakenOff::bag).contains("7");
        assertThat(build.step("tighten-clutch").status()).isEqualTo(StepState.Status.OPEN);
        assertThat(build.partFor("cover")).map(Part::name).contains("");
    }

    @Test
    void takingOffTakesWhatCoversItOff() {
        Build build = build(together(), off("gears"));
        assertThat(build.place("gears").isFilled()).isFalse();
        assertThat(build.place("case-gasket").isFilled()).isFalse();
        assertThat(build.place("studs").isFilled()).isFalse();
        assertThat(build.step("close-case").status()).isEqualTo(StepState.Status.OPEN);
        // nothing says that the crankcase or the piston came off too
        assertThat(build.place("case").isFilled()).isTrue();
        assertThat(build.place("piston").isFilled()).isTrue();
    }

    @Test
    void whatElseAStepFittedStaysUntilItComesOff() {
        Build build = build(together(), off("barrel"));
        assertThat(build.place("barrel").isFilled()).isFalse();
        assertThat(build.place("base-gasket").status()).isEqualTo(Place.Status.AS_FOUND);
        assertThat(build.step("fit-barrel").stands()).isFalse();
    }

    @Test
    void aSingleUsePartThatCameOutIsDestroyedUntilAnotherGoesIn() {
        Build out = build(together(), off("base-gasket"), off("barrel"));
        assertThat(out.place("base-gasket").destroyed()).isTrue();
        assertThat(out.place("barrel").destroyed()).isFalse();
        Build in = SmallBuild.after(out, entered("paper", "base-gasket", 1), fitted("base-gasket", "paper", 1));
        assertThat(in.place("base-gasket").destroyed()).isFalse();
        assertThat(in.place("base-gasket").part()).isEqualTo("paper");
    }

    @Test
    void aSingleUsePartFittedAndTakenOutIsSpentAndTheRestOfItIsNot() {
        Build build = build(inPieces(), entered("clips", "clips", 4), fitted("clips", "clips", 2), done("fit-piston"));
        assertThat(build.place("clips").status()).isEqualTo(Place.Status.IN);
        Build once = SmallBuild.after(build, undone("fit-piston"));
        assertThat(once.part("clips", "clips").orElseThrow().count()).isEqualTo(2);
        assertThat(once.partFor("clips")).map(Part::spent).contains(false);
        Build twice = SmallBuild.after(once, fitted("clips", "clips", 2), off("clips"));
        assertThat(twice.part("clips", "clips")).map(Part::spent).contains(true);
        assertThat(twice.partFor("clips")).map(Part::name).contains("");
    }

    @Test
    void aPositionOfSeveralPartsFillsAsTheyGoIn() {
        Build two = build(inPieces(), fitted("studs", "", 2));
        assertThat(two.place("studs").status()).isEqualTo(Place.Status.PARTLY_IN);
        assertThat(two.unfilled(two.structure().step("close-case").orElseThrow()))
                .extracting(position -> position.id())
                .containsExactly("case-gasket", "studs");
        Build four = SmallBuild.after(two, fitted("studs", "", 1), fitted("studs", "", 1));
        assertThat(four.place("studs").status()).isEqualTo(Place.Status.IN);
        assertThat(four.place("studs").count()).isEqualTo(4);
        Build told = SmallBuild.after(four, fitted("studs", "", 1));
        assertThat(told.place("studs").status()).isEqualTo(Place.Status.IN);
    }

    @Test
    void fittingAnotherPartTakesTheFirstOut() {
        Build build = build(
                inPieces(),
                entered("thin", "base-gasket", 1),
                entered("thick", "base-gasket", 1),
                fitted("base-gasket", "thin", 1),
                fitted("base-gasket", "thick", 1));
        assertThat(build.place("base-gasket").part()).isEqualTo("thick");
        assertThat(build.part("base-gasket", "thin")).map(Part::spent).contains(true);
        assertThat(build.partFor("base-gasket")).map(Part::name).contains("thick");
    }

    @Test
    void thePartThatCountsIsTheOneFittedElseTheLastEnteredElseTheOneThatCameOff() {
        Build off = build(together(), off("barrel"), off("piston"));
        assertThat(off.partFor("piston")).map(Part::name).contains("");
        Build two = SmallBuild.after(off, entered("first", "piston", 1), entered("second", "piston", 1));
        assertThat(two.partFor("piston")).map(Part::name).contains("second");
        Build in = SmallBuild.after(two, new Fact.Fitted("piston", "first", 1, Way.TURNED, ""));
        assertThat(in.partFor("piston")).map(Part::name).contains("first");
        assertThat(in.place("piston").way()).isEqualTo(Way.TURNED);
        assertThat(SmallBuild.after(in, off("piston")).partFor("piston"))
                .map(Part::name)
                .contains("second");
    }

    @Test
    void sizesAndComparisonsGatherOnTheirPart() {
        Build build = build(
                inPieces(),
                entered("pattern", "piston", 1),
                new Fact.Measured("piston", "pattern", Map.of("crown", "49.5", "land", "5")),
                new Fact.Measured("piston", "pattern", Map.of("land", "5.1")),
                new Fact.Measured("piston", "", Map.of("land", "5.0")),
                new Fact.Compared("piston", "pattern", List.of("height"), true, ""),
                new Fact.Compared("piston", "pattern", List.of("pin bore", "height"), false, ""));
        Part pattern = build.part("piston", "pattern").orElseThrow();
        assertThat(pattern.sizes()).isEqualTo(Map.of("crown", "49.5", "land", "5.1"));
        assertThat(pattern.compared()).containsExactly("height", "pin bore");
        assertThat(pattern.agrees()).isFalse();
        assertThat(pattern.mayDiffer()).isTrue();
        assertThat(build.part("piston", "").orElseThrow().sizes()).isEqualTo(Map.of("land", "5.0"));
        assertThat(build.about("pattern")).contains(3L, 4L);
    }

    @Test
    void ordersComeInAndAreUsedUp() {
        Build ordered = build(together(), off("cover"), new Sourcing.Ordered("one", "clips", 6, "the shop", "1.20"));
        assertThat(ordered.place("clips").supply().ordered()).isEqualTo(6);
        assertThat(ordered.place("clips").supply().listed()).isEqualTo(3);
        Build came = SmallBuild.after(ordered, new Sourcing.Arrived("one", "clips", 4, ""));
        assertThat(came.place("clips").supply().ordered()).isEqualTo(2);
        assertThat(came.place("clips").supply().arrived()).isEqualTo(4);
        Build in = SmallBuild.after(came, off("clips"), fitted("clips", "", 2));
        assertThat(in.place("clips").supply().arrived()).isEqualTo(2);
    }

    @Test
    void undoingTakesOutWhatStoodOverItAndListsWhatIsToBeBought() {
        Build all = build(
                together(),
                passed("clips-seen"),
                new Fact.Undone("fit-piston", "the wrong piston", List.of("clips", "base-gasket", "no-such")));
        assertThat(all.step("fit-piston").why()).isEqualTo("the wrong piston");
        assertThat(all.step("fit-barrel").status()).isEqualTo(StepState.Status.OPEN);
        assertThat(all.place("barrel").isFilled()).isFalse();
        assertThat(all.place("clips").destroyed()).isTrue();
        assertThat(all.place("clips").supply().listed()).isEqualTo(3);
        assertThat(all.place("base-gasket").supply().listed()).isEqualTo(3);
        assertThat(all.step("close-case").stands()).isTrue();
    }

    @Test
    void whatWasFoundTogetherIsProvedOnceItCanBeLookedAt() {
        Build found = build(together());
        assertThat(found.check("gears-by-hand").lets()).isTrue();
        Build topEndOff = build(together(), off("barrel"));
        assertThat(topEndOff.check("gears-by-hand").lets())
                .as("nobody can get at the gears")
                .isTrue();
        Build opened = build(together(), off("case-gasket"));
        assertThat(opened.check("gears-by-hand").status()).isEqualTo(CheckState.Status.OPEN);
        assertThat(Refusals.of(opened, begun("close-case")))
                .singleElement()
                .asString()
                .contains("Every gear by hand");
    }

    @Test
    void aWaiverIsForOneDoingOfTheStep() {
        Build waived = build(inPieces(), new Fact.CheckWaived("gears-by-hand", "a week's work"), begun("close-case"));
        Build again = SmallBuild.after(waived, new Fact.Undone("close-case", "a fork was bent", List.of()));
        assertThat(again.check("gears-by-hand").status()).isEqualTo(CheckState.Status.OPEN);
        assertThat(again.unproven("close-case")).extracting(Check::id).contains("gears-by-hand");
    }

    @Test
    void aCheckPassesFailsAndIsWaived() {
        Build build = build(
                inPieces(),
                new Fact.CheckPassed("turns", "free", "smooth"),
                new Fact.CheckFailed("gears-by-hand", "", "second jams"));
        assertThat(build.check("turns"))
                .isEqualTo(
                        new CheckState(CheckState.Status.PASSED, 2, "free", "smooth", List.of(), OptionalLong.empty()));
        assertThat(build.check("gears-by-hand").status()).isEqualTo(CheckState.Status.FAILED);
        assertThat(build.check("gears-by-hand").lets()).isFalse();
    }

    @Test
    void aPassIsVoidOnceWhatItReliedOnWasDisturbed() {
        Build passed = build(together(), passed("gears-by-hand"), passed("clips-seen"), passed("turns"));
        // a suspect comes off
        assertThat(voided(SmallBuild.after(passed, off("clips")), "clips-seen")).isEqualTo(5);
        // what it was done with comes off
        assertThat(voided(SmallBuild.after(passed, off("barrel")), "turns")).isEqualTo(5);
        // a step is done, or undone, that disturbs it
        assertThat(voided(SmallBuild.after(passed, done("tighten-clutch")), "gears-by-hand"))
                .isEqualTo(5);
        assertThat(voided(SmallBuild.after(passed, undone("tighten-clutch")), "gears-by-hand"))
                .isEqualTo(5);
        assertThat(voided(SmallBuild.after(passed, off("cover")), "gears-by-hand"))
                .isEqualTo(5);
        // what is taken off with another is disturbed like it
        assertThat(voided(SmallBuild.after(passed, undone("fit-piston")), "turns"))
                .isEqualTo(5);
        assertThat(SmallBuild.after(passed, off("cover")).check("turns").lets()).isTrue();
    }

    private static long voided(Build build, String check) {
        assertThat(build.check(check).status()).isEqualTo(CheckState.Status.VOID);
        return build.check(check).voidedBy().orElseThrow();
    }

    @Test
    void blastingMakesProvedOilwaysVoidAndWashingDoesNot() {
        Build passed = build(inPieces(), passed("oilways-proved"));
        Build washed = SmallBuild.after(passed, new Fact.Cleaned("case", Cleaning.WASHED, ""));
        assertThat(washed.check("oilways-proved").lets()).isTrue();
        Build blasted = SmallBuild.after(washed, new Fact.Cleaned("case", Cleaning.VAPOUR_BLASTED, ""));
        assertThat(voided(blasted, "oilways-proved")).isEqualTo(4);
        assertThat(blasted.place("case").blasted()).isEqualTo(4);
    }

    @Test
    void aFaultStandsUntilItsPlaceComesApartOrItsCheckPasses() {
        Build found = build(
                together(),
                new Fact.FaultFound("clips", "one is missing"),
                new Fact.FaultFound("turns", "tight once a turn"),
                new Fact.FaultFound("fit-barrel", "no gasket"));
        assertThat(found.openFaults()).containsExactly(2L, 3L, 4L);
        assertThat(SmallBuild.after(found, undone("fit-barrel")).openFaults()).containsExactly(2L, 3L);
        assertThat(SmallBuild.after(found, undone("fit-piston")).openFaults()).containsExactly(3L);
        assertThat(SmallBuild.after(found, passed("turns")).openFaults()).containsExactly(2L, 4L);
    }

    @Test
    void aFaultFoundOnTheBenchStandsUntilThePlaceIsFilled() {
        Build found = build(together(), off("barrel"), new Fact.FaultFound("barrel", "scored"));
        assertThat(found.openFaults()).containsExactly(3L);
        Build rebored = SmallBuild.after(found, new Fact.Disposed("barrel", "", Disposition.REPAIR, "to be rebored"));
        assertThat(rebored.openFaults()).containsExactly(3L);
        assertThat(rebored.place("barrel").disposition()).contains(Disposition.REPAIR);
        assertThat(SmallBuild.after(rebored, fitted("barrel", "", 1)).openFaults())
                .isEmpty();
    }

    @Test
    void theRestIsTakenDownWhereItBelongs() {
        Build build = build(
                together(),
                new Fact.WentTight(OptionalDouble.of(20), OptionalDouble.empty(), ""),
                new Fact.ChanceTaken(Origin.PATTERN, 0.2),
                new Fact.TimeSpent("barrel", 30),
                new Fact.TimeSpent("", 15),
                new Fact.Noted("barrel", "clean"),
                new Fact.Photographed("barrel", "hash", "as found"),
                new Fact.BookChanged("hash", "limits added"));
        assertThat(build.tight()).contains(2L);
        assertThat(SmallBuild.after(build, off("barrel")).tight()).isEmpty();
        assertThat(build.chances()).isEqualTo(Map.of(Origin.PATTERN, 0.2));
        assertThat(build.minutesSpent()).isEqualTo(45);
        assertThat(build.about("barrel")).containsExactly(4L, 6L, 7L);
        assertThat(build.unknown()).isEmpty();
    }

    @Test
    void whatNamesNothingKnownChangesNothingAndIsTold() {
        Build build = build(
                inPieces(),
                done("no-step"),
                passed("no-check"),
                off("no-position"),
                new Fact.FaultFound("nowhere", "noise"),
                SmallBuild.wrong(99));
        assertThat(build.unknown()).containsExactly(2L, 3L, 4L, 5L, 6L);
        assertThat(Snapshot.of(build)).isEqualTo(Snapshot.of(build(inPieces())));
        assertThat(build.size()).isEqualTo(6);
    }

    @Test
    void aPartThatTurnsUpWithoutBeingEnteredIsInHandAllTheSame() {
        Build build = build(inPieces(), new Fact.Measured("piston", "pattern", Map.of("land", "5")));
        Part part = build.partFor("piston").orElseThrow();
        assertThat(part.name()).isEqualTo("pattern");
        assertThat(part.origin()).isEmpty();
        assertThat(part.mayDiffer()).isTrue();
        assertThat(build.unknown()).isEmpty();
    }

    @Test
    void aPartToBeReplacedIsNotUsedUnlessThatIsTakenBack() {
        Build two = build(inPieces(), entered("first", "piston", 1), entered("second", "piston", 1));
        Build bad = SmallBuild.after(two, new Fact.Disposed("piston", "second", Disposition.REPLACE, "cracked"));
        assertThat(bad.partFor("piston")).map(Part::name).contains("first");
        Build good = SmallBuild.after(bad, new Fact.Disposed("piston", "second", Disposition.USE_AGAIN, "only a mark"));
        assertThat(good.partFor("piston")).map(Part::name).contains("second");
    }

    @Test
    void aPartComparedAgainAgreesOnceAllThatDifferedDoes() {
        Build build = build(
                inPieces(),
                entered("pattern", "piston", 1),
                new Fact.Compared("piston", "pattern", List.of("height", "pin bore"), false, ""),
                new Fact.Compared("piston", "pattern", List.of("height"), true, ""));
        assertThat(build.part("piston", "pattern")).map(Part::differing).contains(List.of("pin bore"));
        Build reamed = SmallBuild.after(build, new Fact.Compared("piston", "pattern", List.of("pin bore"), true, ""));
        assertThat(reamed.part("piston", "pattern")).map(Part::agrees).contains(true);
    }

    @Test
    void failedChecksStayFailedUntilTheyPass() {
        Build build = build(together(), failed("turns"), off("barrel"));
        assertThat(build.check("turns").status()).isEqualTo(CheckState.Status.FAILED);
        assertThat(SmallBuild.after(build, passed("turns")).check("turns").lets())
                .isTrue();
    }
}
