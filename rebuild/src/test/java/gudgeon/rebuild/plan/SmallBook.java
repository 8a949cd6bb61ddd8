package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Way;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A few parts of the Tarn 98 and rebuilds of them, for the tests of this room. */
final class SmallBook {
    static final Instant MORNING = Instant.parse("2026-03-02T08:00:00Z");

    private static final String TEXT = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: case, name: crankcase halves}
              - {id: drum, name: shift drum}
              - {id: gears, name: gear shafts}
              - {id: case-gasket, name: crankcase gasket, single-use: true}
              - {id: case-screws, name: crankcase screws, quantity: 8}
              - {id: base-gasket, name: base gasket, single-use: true}
              - {id: clips, name: circlips, quantity: 2, single-use: true}
              - {id: piston, name: piston, critical: true}
              - {id: barrel, name: barrel}
              - {id: cover, name: clutch cover}
            steps:
              - {id: paint-case, name: Paint the crankcase, minutes: 30, sets: 120}
              - {id: lay-case, name: Lay the lower half, fits: [case], needs: [paint-case], minutes: 5}
              - {id: fit-gears, name: Fit gears and drum, fits: [gears, drum], into: [case], minutes: 40}
              - {id: close-case, name: Close the crankcase, fits: [case-gasket, case-screws], covers: [gears, drum], minutes: 20}
              - {id: fit-piston, name: Fit the piston, fits: [piston, clips], needs: [close-case], minutes: 15}
              - {id: fit-barrel, name: Fit the barrel, fits: [base-gasket, barrel], covers: [piston, clips], minutes: 25}
              - {id: set-timing, name: Set the timing, into: [barrel], minutes: 10}
              - {id: fit-cover, name: Fit the clutch cover, fits: [cover], needs: [close-case], minutes: 10}
            checks:
              - {id: gears-by-hand, name: Every gear by hand, how: tried, clears: [drum, gears], with: [gears, drum], holds: [close-case], minutes: 5}
              - {id: clips-seen, name: Both circlips seen in their grooves, how: seen, clears: [clips], minutes: 1}
              - {id: turns-by-hand, name: Two turns by hand, how: tried, clears: [piston], with: [barrel], late: Without the barrel nothing guides the piston., minutes: 2}
            """;

    private SmallBook() {}

    static EngineBook book() {
        return book(TEXT);
    }

    static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(
                "refused: " + reading.faults().stream().map(Fault::sentence).toList());
    }

    /** The rebuild in which these facts were told, a minute apart, from eight in the morning. */
    static Build told(EngineBook book, Fact... facts) {
        return told(Build.of(book), facts);
    }

    static Build told(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long number = build.size() + entries.size();
            entries.add(new Entry("k" + number, MORNING.plusSeconds(60 * number), "tablet", number, fact));
        }
        return build.after(entries);
    }

    static Fact together() {
        return new Fact.Started("98-1", "", Found.TOGETHER);
    }

    static Fact inPieces() {
        return new Fact.Started("98-1", "", Found.IN_PIECES);
    }

    static Fact done(String step) {
        return new Fact.StepDone(step, "");
    }

    static Fact passed(String check) {
        return new Fact.CheckPassed(check, "", "");
    }

    static Fact fitted(String position, String part, int count) {
        return new Fact.Fitted(position, part, count, Way.NOT_SAID, "");
    }

    static Fact off(String position, String bag) {
        return new Fact.TakenOff(position, 1, bag, "", "");
    }
}
