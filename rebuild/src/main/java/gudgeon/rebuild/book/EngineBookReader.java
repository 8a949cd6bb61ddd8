package gudgeon.rebuild.book;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads engine books. All that is wrong with a book is told at once, each fault with its line and what to do. */
public final class EngineBookReader {
    /**
     * Reads a book from a stream, no more than 1 MB of it. The stream is not closed.
     *
     * @throws IOException if the stream can't be read
     */
    public BookReading read(InputStream stream) throws IOException {
        Faults faults = new Faults();
        return BookText.of(stream, faults).map(text -> read(text, faults)).orElseGet(() -> refused(faults));
    }

    /** Reads a book from its text. */
    public BookReading read(String text) {
        Faults faults = new Faults();
        return BookText.accepted(text, faults) ? read(text, faults) : refused(faults);
    }

    private static BookReading read(String text, Faults faults) {
        Optional<EngineBook> book = BookOutline.of(text, faults).map(root -> book(root, faults));
        if (book.isEmpty()) {
            return refused(faults);
        }
        book.get().geometry().ifPresent(geometry -> new Plausibility(geometry, faults).check());
        StructureFaults structure = new StructureFaults(book.get().structure(), faults);
        structure.tellFaults(book.get().geometry());
        if (faults.grave()) {
            return refused(faults);
        }
        structure.tellDoubts(book.get().geometry());
        book.get().geometry().ifPresent(geometry -> new Missing(geometry, faults).tell());
        return new BookReading.Read(book.get(), faults.inOrder());
    }

    private static BookReading refused(Faults faults) {
        return new BookReading.Refused(faults.inOrder());
    }

    private static EngineBook book(Node root, Faults faults) {
        Fields fields = new Fields(Forms.BOOK, root, "", "", new SizeReader(Map.of(), faults));
        fields.whole("book");
        Map<String, Instrument> instruments = instruments(fields, faults);
        SizeReader sizes = new SizeReader(instruments, faults);
        Fields withInstruments = fields.with(sizes);
        Engine engine = engine(withInstruments.block("engine", ""));
        Structure structure = new StructureReader(withInstruments, faults).read();
        return new EngineBook(
                engine,
                figures(fields, faults)
                        ? Optional.of(geometry(engine, List.copyOf(instruments.values()), withInstruments, sizes))
                        : Optional.empty(),
                structure,
                IgnitionReader.read(withInstruments, sizes),
                new CommissioningReader(withInstruments, structure, faults).read());
    }

    /** Whether the book has figures of the engine: all of their blocks, or none as an archetype. */
    private static boolean figures(Fields fields, Faults faults) {
        List<String> missing =
                Forms.FIGURES.stream().filter(key -> !fields.has(key)).toList();
        boolean archetype = missing.size() == Forms.FIGURES.size() && fields.has("steps");
        if (!archetype) {
            missing.forEach(key -> faults.fault(
                    fields.where(),
                    "",
                    "The engine book has no '" + key + "'.",
                    "Add it: "
                            + Forms.BOOK.key(key).orElseThrow().description()
                            + " Or take out all figures, as an archetype does."));
        }
        return missing.size() < Forms.FIGURES.size();
    }

    private static Geometry geometry(
            Engine engine, List<Instrument> instruments, Fields withInstruments, SizeReader sizes) {
        Faults faults = sizes.faults();
        List<ValveEntry> valves = withInstruments.list("valves", true).stream()
                .map(valve -> valve(valve, faults))
                .toList();
        Set<String> valveIds = valves.stream().map(ValveEntry::id).collect(Collectors.toCollection(LinkedHashSet::new));
        PistonReader pistons = new PistonReader(valveIds, faults);
        return new Geometry(
                engine,
                instruments,
                new Cylinder(withInstruments.block("cylinder", "").size("bore")),
                crank(withInstruments.block("crank", "")),
                new Head(withInstruments.block("head", "").optionalSize("chamber")),
                withInstruments.list("gaskets", false).stream()
                        .map(EngineBookReader::gasket)
                        .toList(),
                cam(withInstruments),
                valves,
                withInstruments.list("pistons", false).stream()
                        .map(pistons::read)
                        .toList(),
                new WantedReader(sizes).read(withInstruments.entry("wanted"), valveIds));
    }

    private static Map<String, Instrument> instruments(Fields fields, Faults faults) {
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        fields.named("instruments")
                .forEach((id, instrument) ->
                        InstrumentReader.read(id, instrument, faults).ifPresent(read -> instruments.put(id, read)));
        return instruments;
    }

    private static Engine engine(Fields fields) {
        return new Engine(fields.text("name"), fields.text("maker"), fields.text("note"));
    }

    private static CrankSizes crank(Fields fields) {
        Fields height = fields.block("deck-height", "");
        return new CrankSizes(
                fields.size("stroke"),
                fields.size("rod"),
                fields.size("pin-offset"),
                fields.optionalSize("protrusion"),
                fields.has("deck-height")
                        ? Optional.of(new CrankSizes.DeckHeight(height.size("case"), height.size("barrel")))
                        : Optional.empty());
    }

    private static Gasket gasket(Fields fields) {
        fields.text("note");
        return new Gasket(fields.id(), fields.size("pressed"), fields.size("bore"));
    }

    private static Optional<CamDrive> cam(Fields fields) {
        if (!fields.has("cam")) {
            return Optional.empty();
        }
        return Optional.of(
                new CamDrive(fields.block("cam", "").whole("sprocket-teeth").orElse(1)));
    }

    private static ValveEntry valve(Fields fields, Faults faults) {
        ValveEntry.Kind kind =
                ValveEntry.Kind.valueOf(fields.word("kind").orElse("exhaust").toUpperCase(Locale.ROOT));
        String id = fields.id();
        fields.text("note");
        return new ValveEntry(
                id,
                kind,
                fields.size("head"),
                fields.size("margin"),
                fields.size("offset"),
                fields.size("azimuth"),
                fields.size("tilt"),
                fields.size("recess"),
                fields.size("clearance"),
                fields.optionalSize("spring-travel"),
                new LiftReader(fields.block("lift", id), kind, faults).read());
    }
}
