package gudgeon.rebuild.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class NextTimeTest {
    private static final String BOOK = """
            book: 1
            engine: {name: A top end}   # invented

            positions:
              - {id: rod, name: connecting rod}
              - {id: piston, name: piston}   # arrow to the exhaust
              - {id: gasket, name: base gasket, single-use: true}
              - {id: washers, name: thrust washers, quantity: 2}
              - {id: barrel, name: barrel}
              - {id: head, name: cylinder head}

            joints:
              - id: head-joint
                name: head nuts
                holes:   # from the left
                  - {id: h1, thread: M8, stack: 30 ± 0.1, into: aluminium}
                  - {id: h2, length: 45}

            steps:
              - id: fit-piston
                name: Piston on the rod
                do: Pin through by hand.
                fits: [piston, washers]
                into: [rod]
                minutes: 20   # as guessed
              - id: fit-barrel
                name: Barrel over the piston
                fits: [gasket, barrel]
                covers: [piston]
              - id: fit-head
                name: Head onto the barrel
                fits: [head]
                into: [barrel]
                tightens: [head-joint]

            checks:
              - {id: turns, name: Two turns by hand, how: tried, clears: [piston], with: [head], late: Only with the head on.}

            dimensions:
              - {id: thick, name: thickness of the base gasket, of: gasket, with: micrometer}
              - {id: bore, name: bore, of: barrel, with: bore gauge, at-most: 50.1}
            """;

    private static EngineBook read(String text) {
        return ((BookReading.Read) new EngineBookReader().read(text)).book();
    }

    private static Build build(Fact... facts) {
        return Build.of(read(BOOK))
                .asIf(Stream.concat(Stream.of(new Fact.Started("Top end", "", Found.TOGETHER)), Stream.of(facts))
                        .toList());
    }

    private static NextTime next(Fact... facts) {
        return NextTime.of(build(facts));
    }

    private static List<String> ids(NextTime next) {
        return next.lessons().stream().map(Lesson::id).toList();
    }

    private static HoleMeasured stack(String hole, String stack) {
        return new HoleMeasured("head-joint", hole, "", stack, "", "");
    }

    private static ReadingTaken reading(String dimension, String part, String value) {
        return new ReadingTaken(dimension, part, 1, "", value, "", OptionalDouble.empty(), "");
    }

    private static EngineBook improved(NextTime next) {
        Improved improved = Improved.of(BOOK, next.lessons());
        assertThat(improved.usable()).isTrue();
        return read(improved.text());
    }

    @Test
    void aBuildInWhichNothingHappenedTeachesNothing() {
        NextTime next = next();
        assertThat(next.lessons()).isEmpty();
        assertThat(next.withheld()).isEmpty();
        assertThat(next.sentence()).contains("nothing yet");
    }

    @Test
    void aStackIsOfferedWhereTheBookHasNoneOrAnotherOutsideTheDoubts() {
        NextTime next = next(stack("h1", "31.5 mm"), stack("h2", "30.2 mm"));
        assertThat(ids(next)).containsExactly("stack.head-joint.h1", "stack.head-joint.h2");
        Joint joint = improved(next).structure().joint("head-joint").orElseThrow();
        assertThat(joint.holes())
                .extracting(hole -> hole.stack().orElseThrow().value())
                .containsExactly(31.5, 30.2);
        assertThat(ids(next(stack("h1", "30.05 mm")))).isEmpty();
    }

    @Test
    void anInchSizeIsReadBackAsThatSize() {
        Hole hole = improved(next(stack("h2", "1.25 in")))
                .structure()
                .joint("head-joint")
                .flatMap(joint -> joint.hole("h2"))
                .orElseThrow();
        assertThat(hole.stack().orElseThrow().value()).isEqualTo(31.75);
    }

    @Test
    void aThreadThatDiffersFromTheBookMayBeARepairAndIsWithheld() {
        NextTime next = next(
                new HoleMeasured("head-joint", "h1", "M9", "", "", ""),
                new HoleMeasured("head-joint", "h2", "M8", "", "", ""));
        assertThat(ids(next)).containsExactly("thread.head-joint.h2");
        assertThat(next.withheld())
                .singleElement()
                .satisfies(kept -> assertThat(kept.why()).contains("M8", "repaired"));
    }

    @Test
    void aLengthIsOfferedOnceItHasHeldAndNeverOverTheMakers() {
        Fact out = new FastenerOut("head-joint", "h1", "M8", "42 mm", "", "");
        Fact tight = new Tightened("head-joint", "h1", 1, "20 N.m", "", "");
        assertThat(ids(next(out))).isEmpty();
        assertThat(next(out).withheld())
                .singleElement()
                .satisfies(kept -> assertThat(kept.why()).contains("not proved"));
        assertThat(ids(next(out, tight))).containsExactly("length.head-joint.h1");
        assertThat(ids(next(out, tight, new Fact.FaultFound("head-joint", "It bottoms."))))
                .isEmpty();
        assertThat(next(new FastenerOut("head-joint", "h2", "M8", "50 mm", "", ""))
                        .withheld())
                .singleElement()
                .satisfies(kept -> assertThat(kept.why()).contains("maker's length"));
    }

    @Test
    void aMapGivesPlacesAndTheHolesThatTheBookDidNotHave() {
        NextTime next = next(new JointMapped(
                "head-joint",
                List.of(new Point(0, 0), new Point(80, 0), new Point(80, 60)),
                Map.of("h1", new Point(70.004, 10), "h3", new Point(60, 20.55)),
                "from a photo, to 0.3 mm"));
        assertThat(ids(next)).containsExactly("map.head-joint");
        Joint joint = improved(next).structure().joint("head-joint").orElseThrow();
        assertThat(joint.outline()).hasSize(3);
        assertThat(joint.holes()).extracting(Hole::id).containsExactly("h1", "h2", "h3");
        assertThat(joint.hole("h1").orElseThrow().at()).contains(new Point(70, 10));
        assertThat(joint.hole("h3").orElseThrow().at()).contains(new Point(60, 20.55));
    }

    @Test
    void minutesAreForOneDoing() {
        NextTime next = next(
                new Fact.TimeSpent("fit-piston", 50),
                new Fact.StepDone("fit-piston", ""),
                new Fact.TimeSpent("fit-piston", 30),
                new Fact.StepDone("fit-piston", ""),
                new Fact.TimeSpent("fit-barrel", 25));
        assertThat(ids(next)).containsExactly("minutes.fit-piston");
        assertThat(next.lessons().get(0).entries()).containsExactly(2L, 3L, 4L, 5L);
        assertThat(improved(next).structure().step("fit-piston").orElseThrow().minutes())
                .isEqualTo(40);
        assertThat(Improved.of(BOOK, next.lessons()).text()).contains("minutes: 40   # as guessed");
    }

    @Test
    void aFaultThatCostAnUndoingIsAskedWhereItWouldHaveBeenCheap() {
        NextTime next = next(
                new Fact.FaultFound("piston", "arrow to the inlet: \"wrong way\""),
                new Fact.Undone("fit-head", "", List.of()),
                new Fact.Undone("fit-barrel", "", List.of("gasket")),
                new Fact.Undone("fit-piston", "", List.of()));
        assertThat(ids(next)).containsExactly("fault.fit-piston.2");
        Lesson lesson = next.lessons().get(0);
        assertThat(lesson.why()).contains("3 steps", "Head onto the barrel");
        assertThat(lesson.entries()).containsExactly(2L, 3L, 4L, 5L);
        assertThat(improved(next).structure().step("fit-piston").orElseThrow().instructions())
                .hasSize(2)
                .last()
                .asString()
                .contains("arrow to the inlet: \"wrong way\"");
    }

    @Test
    void aFaultThatCostNothingIsNotALesson() {
        assertThat(ids(next(new Fact.FaultFound("piston", "scored")))).isEmpty();
    }

    @Test
    void aFailedCheckIsAskedAtTheStepOfItsSuspect() {
        NextTime next = next(
                new Fact.CheckFailed("turns", "", "tight at the top"),
                new Fact.Undone("fit-head", "", List.of()),
                new Fact.Undone("fit-piston", "", List.of()),
                new Fact.CheckPassed("turns", "", ""));
        assertThat(ids(next)).containsExactly("fault.fit-piston.2");
        assertThat(next.withheld()).singleElement().satisfies(kept -> {
            assertThat(kept.what()).isEqualTo("Two turns by hand, done 2 times");
            assertThat(kept.why()).contains("tight at the top");
        });
    }

    @Test
    void moreCameOffThanTheBookHas() {
        Fact three = new Fact.TakenOff("washers", 3, "", "", "");
        assertThat(improved(next(three))
                        .structure()
                        .position("washers")
                        .orElseThrow()
                        .quantity())
                .isEqualTo(3);
        assertThat(ids(next(
                        new Fact.TakenOff("washers", 2, "", "", ""),
                        new Fact.Fitted("washers", "", 2, Way.NOT_SAID, ""),
                        new Fact.TakenOff("washers", 2, "", "", ""))))
                .isEmpty();
    }

    @Test
    void aNewPartsSizeIsNotedAndAWornOnesStaysOut() {
        NextTime next = next(
                new Fact.PartEntered("new gasket", "gasket", Origin.ORIGINAL, 1, ""),
                reading("thick", "new gasket", "0.52 mm"),
                reading("bore", "", "50.06 mm"));
        assertThat(ids(next)).containsExactly("new.thick");
        assertThat(improved(next).structure().dimension("thick").orElseThrow().note())
                .contains("0.52 mm");
        assertThat(next.withheld())
                .singleElement()
                .satisfies(kept -> assertThat(kept.what()).contains("1 reading"));
    }

    @Test
    void whatWasDecidedStandsUntilSomethingIsLearnedAnew() {
        LessonDecided yes = new LessonDecided("stack.head-joint.h2", true, "");
        NextTime accepted = next(stack("h2", "30 mm"), yes);
        assertThat(accepted.accepted()).hasSize(1);
        assertThat(accepted.sentence()).isEqualTo("1 lesson: 1 accepted, 0 left out, 0 not decided.");
        assertThat(next(stack("h2", "30 mm"), yes, new LessonDecided("stack.head-joint.h2", false, ""))
                        .accepted())
                .isEmpty();
        assertThat(next(stack("h2", "30 mm"), yes, stack("h2", "31 mm")).open()).hasSize(1);
    }

    @Test
    void whatTheImprovedBookSaysIsNotOfferedAgain() {
        Fact[] facts = {
            stack("h1", "31.5 mm"),
            new Fact.TimeSpent("fit-barrel", 25),
            new Fact.StepDone("fit-barrel", ""),
            new Fact.FaultFound("piston", "turned"),
            new Fact.Undone("fit-piston", "", List.of()),
            new JointMapped("head-joint", List.of(), Map.of("h9", new Point(1, 2)), ""),
            new Fact.TakenOff("washers", 3, "", "", "")
        };
        NextTime next = next(facts);
        assertThat(next.lessons()).hasSize(5);
        List<Lesson> shuffled = new ArrayList<>(next.lessons());
        Collections.shuffle(shuffled, new Random(7));
        String text = Improved.of(BOOK, next.lessons()).text();
        assertThat(Improved.of(BOOK, shuffled).text()).isEqualTo(text);
        Build again = Build.of(read(text))
                .asIf(Stream.concat(Stream.of(new Fact.Started("Top end", "", Found.TOGETHER)), Stream.of(facts))
                        .toList());
        assertThat(NextTime.of(again).lessons()).isEmpty();
    }

    @Test
    void aFaultThatALessonBringsIsTold() {
        NextTime next = next(new JointMapped(
                "head-joint",
                List.of(new Point(0, 0), new Point(80, 0), new Point(80, 60)),
                Map.of("h1", new Point(300, 10)),
                ""));
        Improved improved = Improved.of(BOOK, next.lessons());
        assertThat(improved.usable()).isTrue();
        assertThat(improved.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.what()).contains("outside"));
        assertThat(Improved.of(BOOK, List.of()).faults()).isEmpty();
        assertThat(Improved.of(BOOK, List.of()).text()).isEqualTo(BOOK);
    }
}
