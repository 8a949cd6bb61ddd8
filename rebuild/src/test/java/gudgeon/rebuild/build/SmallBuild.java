package gudgeon.rebuild.build;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Way;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A top end of a few parts, and facts told of it one after another on one device, for the tests of this room. */
final class SmallBuild {
    static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");
    static final EngineBook TOP_END = book("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: case, name: crankcase}
              - {id: gears, name: gear shafts}
              - {id: case-gasket, name: crankcase gasket, single-use: true}
              - {id: studs, name: studs, quantity: 4}
              - {id: piston, name: piston, critical: true, mark: arrow to the exhaust}
              - {id: clips, name: circlips, quantity: 2, single-use: true}
              - {id: base-gasket, name: base gasket, single-use: true}
              - {id: barrel, name: barrel}
              - {id: cover, name: clutch cover}
            steps:
              - {id: lay-case, name: Lay the lower half, fits: [case]}
              - {id: fit-gears, name: Fit the gears, fits: [gears], into: [case]}
              - {id: close-case, name: Close the crankcase, fits: [case-gasket, studs], covers: [gears]}
              - {id: fit-piston, name: Fit the piston, fits: [piston, clips], needs: [close-case]}
              - {id: fit-barrel, name: Fit the barrel, fits: [base-gasket, barrel], covers: [piston, clips]}
              - {id: tighten-clutch, name: Tighten the clutch nut, fits: [cover], needs: [close-case]}
            checks:
              - {id: gears-by-hand, name: Every gear by hand, how: tried, clears: [gears], holds: [close-case], disturbed-by: [tighten-clutch]}
              - {id: oilways-proved, name: Oilways proved, how: seen, clears: [case], holds: [fit-gears], disturbed-by: [blasting]}
              - {id: clips-seen, name: Both circlips seen, how: seen, clears: [clips]}
              - {id: turns, name: Two turns by hand, how: tried, clears: [piston], with: [barrel], late: Nothing guides the piston before.}
            """);

    private SmallBuild() {}

    static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read && reading.faults().isEmpty()) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    static Build build(Fact... facts) {
        return after(Build.of(TOP_END), facts);
    }

    /** Keys are "e" and the entry's number. */
    static Build after(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long seen = build.size() + entries.size();
            entries.add(entry(seen + 1, "tablet", seen, fact));
        }
        return build.after(entries);
    }

    static Entry entry(long number, String device, long seen, Fact fact) {
        return new Entry("e" + number, MORNING.plusSeconds(60 * number), device, seen, fact);
    }

    static Fact together() {
        return new Fact.Started("98-1", "", Found.TOGETHER);
    }

    static Fact inPieces() {
        return new Fact.Started("98-1", "", Found.IN_PIECES);
    }

    static Fact begun(String step) {
        return new Fact.StepBegun(step);
    }

    static Fact done(String step) {
        return new Fact.StepDone(step, "");
    }

    static Fact undone(String step) {
        return new Fact.Undone(step, "", List.of());
    }

    static Fact off(String position) {
        return new Fact.TakenOff(position, 1, "7", "shelf", "");
    }

    static Fact entered(String part, String position, int count) {
        return new Fact.PartEntered(part, position, Origin.PATTERN, count, "");
    }

    static Fact fitted(String position, String part, int count) {
        return new Fact.Fitted(position, part, count, Way.NOT_SAID, "");
    }

    static Fact passed(String check) {
        return new Fact.CheckPassed(check, "", "");
    }

    static Fact failed(String check) {
        return new Fact.CheckFailed(check, "", "");
    }

    static Fact wrong(long entry) {
        return new Fact.Corrected("e" + entry, "a slip", Optional.empty());
    }

    static Fact instead(long entry, Fact fact) {
        return new Fact.Corrected("e" + entry, "a slip", Optional.of(fact));
    }
}
