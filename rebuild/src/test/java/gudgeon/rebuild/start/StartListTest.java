package gudgeon.rebuild.start;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Refusals;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Proving.StartItemSeen;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Way;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StartListTest {
    private static final EngineBook BOOK = book("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            start:
              step: start
              proved-by: {priming: oil-seen, throttle: controls, kill-switch: controls}
              without: [gears]
            fluids:
              - {id: engine-oil, name: engine oil, amount: 0.75 l, proved-by: oil-seen}
              - {id: petrol, name: petrol, amount: half a litre}
            positions:
              - {id: cover, name: cover}
              - {id: plug, name: plug}
            joints:
              - {id: cover-joint, name: cover, holes: [{id: a}, {id: b}]}
            steps:
              - {id: fit-cover, name: Fit the cover, fits: [cover], tightens: [cover-joint]}
              - {id: fit-plug, name: Fit the plug, fits: [plug], needs: [fit-cover]}
              - {id: start, name: First start, into: [cover], needs: [fit-plug]}
              - {id: later, name: Go over it again, into: [plug], needs: [start]}
            checks:
              - {id: oil-seen, name: Oil seen, how: seen, clears: [cover], holds: [start]}
              - {id: controls, name: Controls tried, how: seen, clears: [plug], holds: [start]}
              - {id: dry, name: Dry outside, how: seen, clears: [cover], needs: [start], holds: [later], late: It has to run.}
            """);

    private static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        return ((BookReading.Read) reading).book();
    }

    private static Build build(Fact... facts) {
        return Build.of(BOOK)
                .asIf(Stream.concat(Stream.of(new Fact.Started("Tarn", "", Found.IN_PIECES)), Stream.of(facts))
                        .toList());
    }

    private static Fact fitted(String position) {
        return new Fact.Fitted(position, "", 1, Way.NOT_SAID, "");
    }

    private static Build together(Fact... more) {
        return build(Stream.concat(
                        Stream.of(
                                fitted("cover"),
                                new Fact.StepDone("fit-cover", ""),
                                fitted("plug"),
                                new Fact.StepDone("fit-plug", ""),
                                new Fact.CheckPassed("oil-seen", "", ""),
                                new Fact.CheckPassed("controls", "", "")),
                        Stream.of(more))
                .toArray(Fact[]::new));
    }

    private static StartList list(Build build) {
        return StartList.of(build, Alarms.of(build));
    }

    private static List<String> ids(List<StartItem> items) {
        return items.stream().map(StartItem::id).toList();
    }

    private static Fact[] ticks() {
        return list(together()).holding().stream()
                .map(item -> new StartItemSeen(item.id(), true, ""))
                .toArray(Fact[]::new);
    }

    @Test
    void ofAnEngineInPiecesAllThatComesBeforeIsOpenAndNothingThatComesAfter() {
        StartList list = list(build());
        assertThat(ids(list.of(Kind.CHECK))).containsExactly("oil-seen", "controls");
        assertThat(ids(list.of(Kind.STEP))).containsExactly("fit-cover", "fit-plug");
        assertThat(list.holding()).extracting(StartItem::id).doesNotContain("dry", "later", "start");
    }

    @Test
    void whatACheckProvesIsNotAskedForASecondTime() {
        StartList list = list(together());
        assertThat(ids(list.items())).doesNotHaveDuplicates();
        assertThat(ids(list.of(Kind.FLUID))).containsExactly("petrol");
        assertThat(ids(list.of(Kind.POINT))).containsExactly("two-turns", "spark", "extinguisher", "air", "tools");
        StartItem oil = list.of(Kind.CHECK).get(0);
        assertThat(oil.standing()).isEqualTo(Standing.GOOD);
        assertThat(oil.sentence()).contains("Oil driven round", "Engine oil, 0.75 l");
    }

    @Test
    void aPointSeenAndNotGoodStaysOpen() {
        StartList list = list(together(new StartItemSeen("spark", false, "weak")));
        assertThat(list.of(Kind.POINT))
                .filteredOn(item -> item.id().equals("spark"))
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.holds()).isTrue();
                    assertThat(item.sentence()).endsWith("Weak.");
                });
    }

    @Test
    void withAllSeenItIsSignedWithNothingOpen() {
        Build ready = together(ticks());
        StartList list = list(ready);
        assertThat(list.holding()).isEmpty();
        StartSigned signed = list.signature("the fitter", "");
        assertThat(signed.open()).isEmpty();
        assertThat(Refusals.of(ready, signed)).isEmpty();
        assertThat(list(ready.asIf(List.of(signed))).round().signed()).isPresent();
    }

    @Test
    void overAHoldPointItIsSignedOnlyWithAReasonAndTheRecordKeepsWhatWasOpen() {
        Build unproven = build(fitted("cover"), new Fact.StepDone("fit-cover", ""));
        assertThat(Refusals.of(unproven, new StartSigned("the fitter", List.of(), "")))
                .singleElement()
                .asString()
                .contains("Oil seen", "Controls tried");
        StartSigned without = list(unproven).signature("the fitter", "");
        assertThat(without.open()).contains("Oil seen", "Controls tried", "Fit the plug");
        assertThat(Refusals.of(unproven, without)).singleElement().asString().contains("why it is started");
        assertThat(Refusals.of(unproven, list(unproven).signature("the fitter", "It is sold as it is.")))
                .isEmpty();
    }

    @Test
    void waivedIsShownAndDoesNotHold() {
        StartList list = list(together(new Fact.CheckWaived("controls", "No stop switch fitted.")));
        assertThat(list.of(Kind.CHECK))
                .filteredOn(item -> item.standing() == Standing.WAIVED)
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.holds()).isFalse();
                    assertThat(item.sentence()).contains("No stop switch fitted.");
                });
    }

    @Test
    void aRepeatedCheckSaysSo() {
        StartList list =
                list(together(new Fact.CheckFailed("controls", "", ""), new Fact.CheckPassed("controls", "", "")));
        assertThat(list.of(Kind.CHECK).get(1).sentence()).contains("it failed 1 time before");
    }

    @Test
    void aFailedCheckHolds() {
        StartList list = list(together(new Fact.CheckFailed("controls", "", "The throttle sticks.")));
        assertThat(list.of(Kind.CHECK).get(1).standing()).isEqualTo(Standing.NOT_GOOD);
        assertThat(ids(list.holding())).contains("controls");
    }

    @Test
    void whatComesOffTakesTheSignatureAndTheTicksWithIt() {
        Build signed = together(ticks()).asIf(List.of(new StartSigned("the fitter", List.of(), "")));
        Build off = signed.asIf(List.of(new Fact.Undone("fit-plug", "It is oiled up.", List.of())));
        assertThat(list(off).round().signed()).isEmpty();
        assertThat(list(off).holding()).extracting(StartItem::id).contains("fit-plug", "spark", "air");
    }

    @Test
    void aStepDoneWithAnEmptyPlaceIsToldAsThePlace() {
        StartList list = list(build(new Fact.StepDone("fit-cover", "")));
        assertThat(ids(list.of(Kind.PLACE))).containsExactly("cover");
        assertThat(ids(list.of(Kind.STEP))).containsExactly("fit-plug");
    }

    @Test
    void aJointWithoutATorqueIsLookedAtAndOneHalfTightenedHolds() {
        assertThat(list(together()).of(Kind.JOINT))
                .singleElement()
                .satisfies(item -> assertThat(item.stops()).isFalse());
        Fact first = new Tightened("cover-joint", "a", 1, "5 N.m", "", "");
        assertThat(list(together(first)).of(Kind.JOINT)).singleElement().satisfies(item -> {
            assertThat(item.holds()).isTrue();
            assertThat(item.sentence()).startsWith("It is half tightened.");
        });
    }

    @Test
    void startedUnsignedIsAnAlarmUntilItIsSigned() {
        Build begun = together(new Fact.StepBegun("start"));
        assertThat(Alarms.of(begun)).extracting(alarm -> alarm.kind().key()).contains("unsigned");
        Build signed = begun.asIf(List.of(new StartSigned("the fitter", List.of(), "")));
        assertThat(Alarms.of(signed)).extracting(alarm -> alarm.kind().key()).doesNotContain("unsigned");
    }

    @Test
    void anUnknownPointIsRefused() {
        assertThat(Refusals.of(together(), new StartItemSeen("horn", true, "")))
                .singleElement()
                .asString()
                .contains("no point 'horn'");
    }
}
