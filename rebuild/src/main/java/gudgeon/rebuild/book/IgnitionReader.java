package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import gudgeon.rebuild.book.Ignition.PointsCam;
import gudgeon.rebuild.book.Ignition.Turns;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The book's block of the ignition: its form, and its reading. */
final class IgnitionReader {
    static final Form IGNITION = new Form(
            "ignition",
            "The spark as the maker wants it; what stands after ± is how far off it may be set.",
            List.of(
                    new Form.Key(
                            "opens",
                            new Value.OfEvent(),
                            false,
                            "ignition",
                            "Where the points open: '25 btdc ± 2' in degrees of the crank, or '2.5 mm btdc ± 0.2' of the piston."),
                    Keys.optional("gap", Unit.MM, 0.05, 3, "points gap", "Gap of the points at their widest."),
                    Keys.optional(
                            "dwell",
                            Unit.DEGREES,
                            10,
                            350,
                            "dwell",
                            "Degrees of the points cam for which the points are closed, at the gap given."),
                    Keys.optional(
                            "flywheel",
                            Unit.MM,
                            20,
                            1500,
                            "flywheel diameter",
                            "Diameter of the flywheel where marks are made on its rim."),
                    new Form.Key(
                            "turns",
                            new Value.OfWord(List.of("clockwise", "anticlockwise")),
                            false,
                            "turns",
                            "Which way the flywheel turns as the engine runs, seen from its face."),
                    new Form.Key(
                            "points",
                            new Value.OfWord(List.of("flywheel", "camshaft")),
                            false,
                            "points cam",
                            "How the cam that opens the points turns: flywheel with the crank, camshaft at half its speed, as do magnetos geared so.")));

    private static final Value.OfSize IN_DEGREES = new Value.OfSize(Unit.DEGREES, -30, 70);
    private static final Value.OfSize IN_MM = new Value.OfSize(Unit.MM, 0, 60);
    private static final Pattern LENGTH = Pattern.compile("\\d\\s*(mm|cm|in|inch|inches|\"|thou)(\\W|$)");
    private static final Pattern BEFORE = Pattern.compile("\\s*\\bbtdc\\b", Pattern.CASE_INSENSITIVE);

    private IgnitionReader() {}

    /** The block under the book's key, if it is there. */
    static Optional<Ignition> read(Fields book, SizeReader sizes) {
        if (!book.has("ignition")) {
            return Optional.empty();
        }
        Fields fields = book.block("ignition", "");
        return Optional.of(new Ignition(
                opens(fields, sizes),
                fields.optionalSize("gap"),
                fields.optionalSize("dwell"),
                fields.optionalSize("flywheel"),
                fields.word("turns").map(word -> Turns.valueOf(word.toUpperCase(Locale.ROOT))),
                fields.word("points").map(word -> PointsCam.valueOf(word.toUpperCase(Locale.ROOT)))));
    }

    private static Optional<Size> opens(Fields fields, SizeReader sizes) {
        if (!fields.has("opens")) {
            return Optional.empty();
        }
        Node entry = fields.entry("opens");
        String path = fields.at("opens");
        if (!(entry instanceof Node.Text text)) {
            return Optional.of(sizes.read(entry, path, "ignition", IN_DEGREES));
        }
        boolean length = LENGTH.matcher(text.text().toLowerCase(Locale.ROOT)).find();
        String plain = BEFORE.matcher(text.text()).replaceAll("").strip();
        Size size = sizes.read(new Node.Text(plain, text.where()), path, "ignition", length ? IN_MM : IN_DEGREES);
        return Optional.of(new Size(
                path,
                "ignition",
                size.unit(),
                size.quantity(),
                text.text().strip(),
                size.instrument(),
                size.readings(),
                size.note(),
                size.source(),
                size.where()));
    }
}
