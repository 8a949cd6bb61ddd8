package gudgeon.rebuild.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing.Offered;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Dates of a small rebuild that can be worked out by hand. */
class ScheduleTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

    private static final EngineBook BOOK = book("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: piston, name: piston}
              - {id: base-gasket, name: base gasket, single-use: true}
              - {id: head-gasket, name: head gasket, single-use: true}
              - {id: head, name: head}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston], minutes: 60}
              - {id: fit-barrel, name: Fit the barrel, fits: [base-gasket], covers: [piston], minutes: 120}
              - {id: fit-head, name: Fit the head, fits: [head-gasket, head], needs: [fit-barrel], minutes: 240}
            checks:
              - {id: piston-seen, name: Piston seen in place, how: seen, clears: [piston], holds: [fit-barrel], minutes: 20}
            """);

    private static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        return ((BookReading.Read) reading).book();
    }

    private static Build told(Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            entries.add(new Entry("k" + entries.size(), MORNING.plusSeconds(entries.size()), "tablet", 0, fact));
        }
        return Build.of(BOOK).after(entries);
    }

    private static Fact inHand(String position) {
        return new Fact.PartEntered("the " + position, position, Origin.ORIGINAL, 1, "");
    }

    private static Fact ordered(String position, Days days) {
        return new Ordered(
                "A", position, "", Optional.empty(), 1, "", "", Optional.of(days), Optional.empty(), Map.of());
    }

    private static Fact offered(String position, Days days) {
        return new Offered(position, "", Optional.empty(), "Low Quay Workshop", "", Optional.of(days), Map.of());
    }

    private static Schedule schedule(Build build, LocalDate today) {
        return Schedule.of(build, Plan.of(build, MORNING.plusSeconds(3600)), today);
    }

    private static final Fact PIECES = new Fact.Started("98-1", "", Found.IN_PIECES);

    @Test
    void withAllInHandTheBenchDecides() {
        Build build = told(
                PIECES, inHand("piston"), inHand("base-gasket"), inHand("head-gasket"), inHand("head"), new PaceSet(7));
        Schedule schedule = schedule(build, TODAY);
        assertThat(schedule.deciders()).hasSize(1);
        assertThat(schedule.deciders().get(0).id()).isEmpty();
        assertThat(schedule.deciders().get(0).share()).isEqualTo(1);
        // 440 likely minutes at an hour a day, times the triangle 0.75, 1, 1.75 at a half: 1.1464
        double half = new Triangle(0.75, 1, 1.75).at(0.5) * 440 / 60;
        assertThat(ChronoUnit.DAYS.between(TODAY, schedule.end().half())).isEqualTo((long) Math.ceil(half) - 1);
        assertThat(schedule.end().early()).isBefore(schedule.end().half());
        assertThat(schedule.end().late()).isAfter(schedule.end().half());
        assertThat(schedule.arrivals()).isEmpty();
        assertThat(schedule.thisEvening()).extracting(Doable::id).containsExactly("fit-piston");
        assertThat(schedule.holdPoints()).extracting(Expected::id).containsExactly("piston-seen");
        assertThat(schedule.assumptions()).anyMatch(sentence -> sentence.startsWith("7 h a week"));
    }

    @Test
    void aLateGasketDecidesAndTheDateMovesWithIt() {
        Build soon = told(
                PIECES,
                inHand("piston"),
                inHand("base-gasket"),
                inHand("head"),
                new PaceSet(7),
                ordered("head-gasket", new Days(30, 30, 30)));
        Schedule schedule = schedule(soon, TODAY);
        assertThat(schedule.deciders().get(0).id()).isEqualTo("head-gasket");
        assertThat(schedule.deciders().get(0).share()).isEqualTo(1);
        assertThat(schedule.arrivals())
                .singleElement()
                .satisfies(arrival -> assertThat(arrival.day().half()).isEqualTo(TODAY.plusDays(30)));
        double half = 30 + new Triangle(0.75, 1, 1.75).at(0.5) * 240 / 60;
        assertThat(ChronoUnit.DAYS.between(TODAY, schedule.end().half())).isEqualTo((long) Math.ceil(half) - 1);
        Schedule overdue = schedule(soon, TODAY.plusDays(40));
        assertThat(overdue.assumptions()).anyMatch(sentence -> sentence.contains("is over"));
        assertThat(overdue.end().half()).isAfter(TODAY.plusDays(40));
    }

    @Test
    void theOrderThatCostsMostIfItWaitsIsPlacedFirst() {
        Build build = told(
                PIECES,
                inHand("piston"),
                inHand("head"),
                new PaceSet(14),
                offered("base-gasket", new Days(2, 3, 4)),
                offered("head-gasket", new Days(40, 45, 60)));
        Schedule schedule = schedule(build, TODAY);
        assertThat(schedule.toPlace()).extracting(ToPlace::position).containsExactly("head-gasket", "base-gasket");
        assertThat(schedule.toPlace()).extracting(ToPlace::costsDays).containsExactly(7L, 0L);
        assertThat(schedule.sentence()).contains("hangs on the head gasket, still to be ordered");
    }

    @Test
    void whatNobodySaidIsAssumedAloud() {
        Schedule schedule = schedule(told(PIECES, inHand("piston")), TODAY);
        assertThat(schedule.assumptions())
                .anyMatch(sentence -> sentence.startsWith("Nobody said how many hours"))
                .anyMatch(sentence -> sentence.startsWith("Nobody said how long the base gasket takes"));
    }

    @Test
    void theBenchsOwnTimesCountOnceThereAreSome() {
        Build slow = told(
                PIECES,
                new PaceSet(7),
                inHand("piston"),
                inHand("base-gasket"),
                new Fact.StepDone("fit-piston", ""),
                new Fact.TimeSpent("fit-piston", 120),
                new Fact.CheckPassed("piston-seen", "", ""),
                new Fact.TimeSpent("piston-seen", 40),
                new Fact.StepDone("fit-barrel", ""),
                new Fact.TimeSpent("fit-barrel", 240));
        assertThat(Pace.of(slow).factor().likely()).isEqualTo(2, within(1e-12));
        assertThat(Pace.of(slow).assumptions()).anyMatch(sentence -> sentence.contains("2 times as long"));
    }

    @Test
    void nothingIsLeftOfAnEngineThatIsTogether() {
        Schedule schedule = schedule(told(new Fact.Started("98-1", "", Found.TOGETHER)), TODAY);
        assertThat(schedule.sentence()).isEqualTo("Nothing is left to do.");
        assertThat(schedule.end().late()).isEqualTo(TODAY);
    }

    @Test
    void theSameBuildHasTheSameDates() {
        Build build = told(PIECES, inHand("piston"), ordered("base-gasket", new Days(3, 10, 30)));
        assertThat(schedule(build, TODAY)).isEqualTo(schedule(build, TODAY));
    }
}
