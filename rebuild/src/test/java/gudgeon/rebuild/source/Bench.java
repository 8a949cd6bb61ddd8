package gudgeon.rebuild.source;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A few parts of the Tarn 98 and rebuilds of them, one entry a day, for the tests of this room. */
final class Bench {
    static final LocalDate FIRST = LocalDate.of(2026, 3, 2);

    static final EngineBook BOOK = book("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: barrel, name: barrel}
              - {id: piston, name: piston, critical: true, compare: [skirt, compression height]}
              - {id: clips, name: circlips, quantity: 2, single-use: true}
              - {id: base-gasket, name: base gasket, single-use: true}
              - {id: head-gasket, name: head gasket, single-use: true}
              - {id: head, name: head}
              - {id: guides, name: valve guides, quantity: 2}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston, clips], minutes: 60}
              - {id: fit-barrel, name: Fit the barrel, fits: [base-gasket, barrel], covers: [piston, clips], minutes: 60}
              - {id: fit-head, name: Fit the head, fits: [head-gasket, head, guides], covers: [barrel], minutes: 120}
            dimensions:
              - {id: bore, name: bore, of: barrel, with: bore gauge, at-least: 50.0, at-most: 50.06, new: {at-least: 50.0, at-most: 50.015}}
              - id: piston-skirt
                name: piston skirt
                of: piston
                with: micrometer
                at-least: 49.92
                at-most: 49.98
                new: {at-least: 49.965, at-most: 49.98}
                inspect: true
              - {id: compression-height, name: compression height, of: piston, with: depth gauge, at-least: 26.9, at-most: 27.1, inspect: true}
              - {id: skirt-clearance, name: skirt clearance, of: piston, at-least: 0.02, at-most: 0.1, derived: {as: clearance, of: [bore, piston-skirt]}}
            """);

    private Bench() {}

    static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    static Build told(Fact... facts) {
        return told(Build.of(BOOK), facts);
    }

    static Build told(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long number = build.size() + entries.size();
            Instant at = Instant.parse(FIRST + "T18:00:00Z").plusSeconds(86_400 * number);
            entries.add(new Entry("k" + number, at, "tablet", number, fact));
        }
        return build.after(entries);
    }

    static Fact together() {
        return new Fact.Started("98-1", "", Found.TOGETHER);
    }

    static Fact off(String position, int count) {
        return new Fact.TakenOff(position, count, "7", "", "");
    }

    static Fact undone(String step) {
        return new Fact.Undone(step, "", List.of());
    }

    static Fact pattern(String part, String position) {
        return new Fact.PartEntered(part, position, Origin.PATTERN, 1, "");
    }

    static Fact reading(String dimension, String part, String value, String instrument) {
        return new ReadingTaken(dimension, part, 1, "", value, instrument, OptionalDouble.empty(), "");
    }

    static PartsList list(Build build) {
        return PartsList.of(build, FIRST.plusDays(build.size()));
    }

    static PartsLine line(Build build, String position) {
        return list(build).lines().stream()
                .filter(line -> line.position().equals(position))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is said of " + position));
    }
}
