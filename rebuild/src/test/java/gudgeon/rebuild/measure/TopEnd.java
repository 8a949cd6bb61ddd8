package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small book of dimensions, a bench of instruments and readings, for the tests of this room. */
final class TopEnd {
    static final EngineBook BOOK = book("""
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: barrel, name: barrel}
              - {id: piston, name: piston, oversizes: [0.25 mm, 0.50 mm]}
              - {id: springs, name: clutch springs, quantity: 4}
              - {id: crank, name: crankshaft}
            steps:
              - {id: fit-barrel, name: Fit the barrel, fits: [piston, barrel]}
            dimensions:
              - id: bore
                name: bore
                of: barrel
                with: bore gauge set with a micrometer
                heights: [top, bottom]
                axes: [along the pin, across the pin]
                new: {at-least: 39.000, at-most: 39.015}
                at-most: 39.100
              - {id: ovality, name: ovality of the bore, of: barrel, at-most: 0.05, derived: {as: ovality, of: [bore]}}
              - {id: taper, name: taper of the bore, of: barrel, at-most: 0.05, derived: {as: taper, of: [bore]}}
              - {id: wear, name: wear of the bore, of: barrel, at-most: 0.085, derived: {as: wear, of: [bore]}}
              - {id: skirt, name: piston skirt, of: piston, with: micrometer, new: {at-least: 38.965, at-most: 38.980}, at-least: 38.93}
              - id: clearance
                name: clearance of the piston in the bore
                of: piston
                new: {at-least: 0.02, at-most: 0.05}
                at-most: 0.15
                derived: {as: clearance, of: [bore, skirt]}
              - {id: spring, name: length of the clutch spring, of: springs, pieces: 4, with: calliper, new: {at-least: 35.0, at-most: 35.6}, at-least: 34}
              - {id: run-out, name: run-out of the crank, of: crank, with: dial gauge, new: {at-most: 0.02}, at-most: 0.05}
              - {id: gap, name: gap of the top ring, of: piston, with: feeler gauges, new: {at-least: 0.15, at-most: 0.3}, at-least: 0.15, at-most: 0.4}
              - {id: stud, name: length of the stud, of: barrel, with: calliper, usual: {at-least: 40, at-most: 200}}
            """);

    static final InstrumentKept VERNIER = kept("vernier", InstrumentKind.CALLIPER, "0 to 150 mm", "0.02 mm", "0.03 mm");
    static final InstrumentKept MICROMETER =
            kept("micrometer", InstrumentKind.MICROMETER, "25 to 50 mm", "0.001 mm", "0.004 mm");
    static final InstrumentKept BORE_GAUGE =
            kept("bore gauge", InstrumentKind.BORE_GAUGE, "35 to 60 mm", "0.001 mm", "0.004 mm");
    static final InstrumentKept INCH_MICROMETER =
            kept("inch micrometer", InstrumentKind.MICROMETER, "1 to 2 in", "0.0001 in", "0.0002 in");
    static final List<String> PLACES =
            List.of("top, along the pin", "top, across the pin", "bottom, along the pin", "bottom, across the pin");

    private TopEnd() {}

    static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    static InstrumentKept kept(String name, InstrumentKind kind, String range, String resolution, String error) {
        return new InstrumentKept(name, kind, range, resolution, error, Optional.of(LocalDate.of(2026, 3, 1)), "");
    }

    static ReadingTaken read(String dimension, String at, String value, String with) {
        return new ReadingTaken(dimension, "", 1, at, value, with, OptionalDouble.empty(), "");
    }

    static ReadingTaken piece(String dimension, int piece, String value, String with) {
        return new ReadingTaken(dimension, "", piece, "", value, with, OptionalDouble.empty(), "");
    }

    /** One reading of the bore at each place. */
    static Fact[] bore(String with, String... values) {
        Fact[] facts = new Fact[values.length];
        for (int i = 0; i < values.length; i++) {
            facts[i] = read("bore", PLACES.get(i), values[i], with);
        }
        return facts;
    }

    /** A build whose top end is off, with all instruments, after some facts. */
    static Build with(Fact... facts) {
        return after(
                Build.of(BOOK),
                join(
                        new Fact[] {
                            new Fact.Started("98-1", "", Found.TOGETHER),
                            new TakenOff("barrel", 1, "1", "", ""),
                            new TakenOff("piston", 1, "1", "", ""),
                            VERNIER,
                            MICROMETER,
                            BORE_GAUGE,
                            INCH_MICROMETER
                        },
                        facts));
    }

    static Build after(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long seen = build.size() + entries.size();
            entries.add(new Entry("e" + (seen + 1), Instant.EPOCH.plusSeconds(60 * seen), "tablet", seen, fact));
        }
        return build.after(entries);
    }

    static Fact[] join(Fact[] one, Fact... other) {
        List<Fact> all = new ArrayList<>(List.of(one));
        all.addAll(List.of(other));
        return all.toArray(Fact[]::new);
    }

    static Dimension dimension(String id) {
        return BOOK.structure().dimension(id).orElseThrow();
    }

    static Verdict verdict(Build build, String dimension) {
        return Verdict.of(build, dimension(dimension));
    }
}
