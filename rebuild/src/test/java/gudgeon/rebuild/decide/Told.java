package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small top end with the figures of the invented engine, and facts told of it, for the tests of this room. */
final class Told {
    private static final String STRUCTURE = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: case, name: crankcase}
              - {id: bearing, name: main bearing}
              - {id: case-gasket, name: crankcase gasket, single-use: true}
              - {id: crank, name: crankshaft}
              - {id: barrel, name: barrel, sizes: cylinder}
              - {id: piston, name: piston, sizes: pistons, critical: true, oversizes: [0.25 mm, 0.50 mm]}
              - {id: head, name: cylinder head, sizes: head}
              - {id: head-gasket, name: head gasket, sizes: gaskets, single-use: true}
            family:
              - id: tarn-125
                name: Tarn 125
                parts:
                  barrel: {bore: 56.50 mm, spigot: 60.95 mm}
                  piston: {skirt: 56.46 mm, land: 56.05 mm, compression-height: 27.00 mm}
                  head: {chamber: 13.2 cm3}
            dimensions:
              - {id: bore, name: bore, of: barrel, key: bore, with: bore gauge, new: {at-least: 50.000, at-most: 50.015}, at-most: 50.06}
              - {id: spigot, name: barrel spigot, of: barrel, new: {at-least: 54.94, at-most: 54.97}}
              - {id: mouth, name: case mouth, of: case, new: {at-least: 55.00, at-most: 55.03}}
              - {id: spigot-clearance, name: clearance of the spigot, of: barrel, at-least: 0.01, at-most: 0.15, derived: {as: clearance, of: [mouth, spigot]}}
              - {id: skirt, name: piston skirt, of: piston, new: {at-least: 49.955, at-most: 49.970}}
              - {id: piston-clearance, name: clearance of the piston, of: piston, new: {at-least: 0.030, at-most: 0.060}, at-least: 0.02, at-most: 0.12, derived: {as: clearance, of: [bore, skirt]}}
              - {id: land, name: land, of: piston, key: land}
              - {id: compression-height, name: compression height, of: piston, key: compression-height}
              - {id: chamber, name: chamber, of: head, key: chamber, unit: cm3}
              - {id: seat, name: bearing seat, of: case, new: {at-least: 41.98, at-most: 41.995}}
            steps:
              - {id: lay-case, name: Lay the case, fits: [case, bearing, crank], minutes: 60}
              - {id: close-case, name: Close the case, fits: [case-gasket], covers: [bearing, crank], minutes: 60}
              - {id: fit-top, name: Fit the top end, fits: [piston, barrel], needs: [close-case], minutes: 60}
              - {id: fit-head, name: Fit the head, fits: [head-gasket, head], covers: [piston], minutes: 30}
            checks:
              - {id: piston-clear, name: Piston clears, how: tried, clears: [piston], late: Nothing guides it before.}
            """;
    static final EngineBook BOOK = withFigures(STRUCTURE);

    private Told() {}

    /** A structure with the figures of the invented engine. */
    static EngineBook withFigures(String structure) {
        EngineBook tarn = tarn();
        return new EngineBook(tarn.engine(), tarn.geometry(), read(structure).structure());
    }

    static EngineBook tarn() {
        try {
            return read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static EngineBook read(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    static Build build(Fact... facts) {
        return after(Build.of(BOOK), facts);
    }

    static Build after(Build build, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            long seen = build.size() + entries.size();
            entries.add(new Entry("e" + (seen + 1), Instant.EPOCH.plusSeconds(60 * seen), "tablet", seen, fact));
        }
        return build.after(entries);
    }

    static Fact together() {
        return new Fact.Started("98-1", "", Found.TOGETHER);
    }

    static OptionDrawn drawn(String option) {
        return new OptionDrawn(option, option + " in words", "because");
    }

    static OptionLine work(String option, String position, Map<String, String> sizes) {
        return new OptionLine(option, position, "work", Optional.empty(), "", "80.00 EUR", days(7, 10, 20), sizes);
    }

    static OptionLine bought(String option, String position, String price, Map<String, String> sizes) {
        return new OptionLine(option, position, "new", Optional.of(Origin.PATTERN), "", price, days(3, 5, 12), sizes);
    }

    static OptionLine ofFamily(String option, String position) {
        return new OptionLine(
                option, position, "larger", Optional.of(Origin.USED), "tarn-125", "", Optional.empty(), Map.of());
    }

    private static Optional<Days> days(int least, int likely, int most) {
        return Optional.of(new Days(least, likely, most));
    }
}
