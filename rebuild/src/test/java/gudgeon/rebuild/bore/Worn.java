package gudgeon.rebuild.bore;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Sourcing;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small book with a bore and a piston, and facts told of them, for the tests of this room and of the alarms. */
public final class Worn {
    public static final String BOOK = """
            book: 1
            engine: {name: Tarn 98, maker: Merrow & Tull}
            positions:
              - {id: barrel, name: barrel}
              - {id: piston, name: piston, oversizes: [0.25 mm, 0.50 mm, 1.00 mm]}
              - {id: top-ring, name: top ring}
            steps:
              - {id: fit-piston, name: Fit the piston, fits: [piston, top-ring]}
              - {id: fit-barrel, name: Fit the barrel, fits: [barrel], needs: [fit-piston]}
            dimensions:
              - id: bore
                name: bore
                of: barrel
                heights: [top, bottom]
                axes: [along the pin, across the pin]
                new: {at-least: 50.000, at-most: 50.015}
                at-least: 50.000
                at-most: 50.060
              - {id: score-depth, name: depth of scores, of: barrel}
              - {id: piston-skirt, name: piston skirt, of: piston}
              - id: skirt-clearance
                name: clearance of the piston
                of: piston
                new: {at-least: 0.02, at-most: 0.05}
                at-least: 0.02
                at-most: 0.10
                derived: {as: clearance, of: [bore, piston-skirt]}
              - {id: ring-gap-top, name: gap of the top ring, of: top-ring, at-least: 0.15, at-most: 0.40}
            """;

    private Worn() {}

    public static EngineBook book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new AssertionError(reading.faults().stream().map(Fault::sentence).toList());
    }

    public static Build build(Fact... facts) {
        return build(BOOK, facts);
    }

    public static Build build(String book, Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry("e0", Instant.EPOCH, "tablet", 0, new Fact.Started("98-1", "", Found.IN_PIECES)));
        for (Fact fact : facts) {
            int seen = entries.size();
            entries.add(new Entry("e" + seen, Instant.EPOCH.plusSeconds(60L * seen), "tablet", seen, fact));
        }
        return Build.of(book(book)).after(entries);
    }

    /** A bore measured at top and bottom on both axes with a gauge good to 0.005 mm. */
    public static Fact[] bore(
            double topAlong, double topAcross, double bottomAlong, double bottomAcross, Fact... more) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Measuring.InstrumentKept(
                "gauge", InstrumentKind.BORE_GAUGE, "35 to 60 mm", "0.005 mm", "0.005 mm", Optional.empty(), ""));
        facts.add(reading("bore", "", "top, along the pin", topAlong));
        facts.add(reading("bore", "", "top, across the pin", topAcross));
        facts.add(reading("bore", "", "bottom, along the pin", bottomAlong));
        facts.add(reading("bore", "", "bottom, across the pin", bottomAcross));
        facts.addAll(List.of(more));
        return facts.toArray(new Fact[0]);
    }

    public static Fact reading(String dimension, String part, String at, double mm) {
        return new Measuring.ReadingTaken(dimension, part, 1, at, mm + " mm", "gauge", OptionalDouble.empty(), "");
    }

    public static Fact piston(String name) {
        return new Fact.PartEntered(name, "piston", Origin.PATTERN, 1, "", "", "");
    }

    public static Fact ordered(String skirt) {
        return new Sourcing.Ordered(
                "A",
                "piston",
                "big",
                Optional.empty(),
                1,
                "a shop",
                "",
                Optional.empty(),
                Optional.empty(),
                Map.of("piston-skirt", skirt));
    }

    public static Fact offered(String skirt) {
        return new Sourcing.Offered(
                "piston",
                "",
                Optional.empty(),
                "a breaker",
                "20 EUR",
                Optional.<Days>empty(),
                Map.of("piston-skirt", skirt));
    }

    public static Fact sent() {
        return new Sourcing.WorkSent("barrel", "", "machinist", "rebore", "", Optional.empty());
    }

    public static Fact back() {
        return new Sourcing.WorkBack("barrel", "", "");
    }
}
