package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Form.Value;
import java.util.Locale;
import java.util.regex.Matcher;

/** Reads the angles at which a valve opens and closes, as manuals give them: "45 bbdc", "10 btdc", "15 atdc", "50 abdc". */
final class EventReader {
    private static final Value.OfSize CYCLE = new Value.OfSize(Unit.DEGREES, 0, 720);
    private static final Value.OfSize FROM_CENTRE = new Value.OfSize(Unit.DEGREES, -90, 120);

    private final SizeReader sizes;

    EventReader(SizeReader sizes) {
        this.sizes = sizes;
    }

    /**
     * The crank angle from firing top dead centre. Dead centres are those at which a valve of that kind opens and closes: an
     * exhaust opens about 180 and closes about 360, an inlet opens about 360 and closes about 540.
     */
    Size read(Node entry, String path, String label, ValveEntry.Kind kind, boolean opens) {
        if (!(entry instanceof Node.Text text) || entry.where().line() == 0) {
            return sizes.read(entry, path, label, CYCLE);
        }
        Matcher reference = TypedAngle.REFERENCE.matcher(text.text());
        if (!reference.find()) {
            return sizes.read(text, path, label, CYCLE);
        }
        boolean top = reference.group(2).toLowerCase(Locale.ROOT).equals("tdc");
        double centre = TypedAngle.centreDeg(kind, top);
        double sign = reference.group(1).toLowerCase(Locale.ROOT).equals("b") ? -1 : 1;
        boolean expectTop = opens == (kind == ValveEntry.Kind.INLET);
        if (top != expectTop) {
            sizes.faults()
                    .doubt(
                            text.where(),
                            path,
                            "The " + label + " is given from " + (top ? "top" : "bottom") + " dead centre, where "
                                    + (expectTop ? "top" : "bottom") + " dead centre is usual.",
                            "Check the letters: btdc, atdc, bbdc, abdc.");
        }
        String plain =
                text.text().substring(0, reference.start()) + " " + text.text().substring(reference.end());
        Size size = sizes.read(
                new Node.Text(plain.replaceAll("\\s+", " ").strip(), text.where()), path, label, FROM_CENTRE);
        return new Size(
                path,
                label,
                Unit.DEGREES,
                size.at(centre + sign * size.value()).quantity(),
                text.text().strip(),
                size.instrument(),
                size.readings(),
                size.note(),
                size.source(),
                size.where());
    }
}
