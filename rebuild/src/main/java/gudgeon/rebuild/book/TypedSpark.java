package gudgeon.rebuild.book;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the points opened as a person writes it: "25 btdc" of the crank, "2.5 mm btdc" of the piston, "2.9 mm btdc at 30 deg" by a
 * gauge in a leaning plug hole, "24 mm btdc on the rim" of the flywheel; "atdc" where it was after top dead centre.
 */
public sealed interface TypedSpark {
    /** Degrees of the crank before top dead centre, negative after. */
    record Degrees(double beforeDeg) implements TypedSpark {}

    /**
     * Travel of a dial gauge on the piston.
     *
     * @param gaugeMm how far the gauge stood below top dead centre, mm, 0 or more
     * @param before whether the crank stood before top dead centre
     * @param leanDeg how far the hole leans from the bore's axis, in degrees
     */
    record Piston(double gaugeMm, boolean before, double leanDeg) implements TypedSpark {}

    /** Length along the flywheel's rim before top dead centre, mm, negative after. */
    record RimLength(double beforeMm) implements TypedSpark {}

    /**
     * It can't be used.
     *
     * @param sentence why, and what to type
     */
    record Refused(String sentence) implements TypedSpark {}

    /** Reads what was typed. */
    static TypedSpark of(String text) {
        Matcher parts = Pattern.compile("^(.*?)\\s*\\b(btdc|atdc|tdc)?\\s*(?:\\bat\\s+(.+)|\\b(on the rim))?$")
                .matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            return refused(text);
        }
        boolean before = !"atdc".equals(parts.group(2));
        boolean rim = parts.group(4) != null;
        String size = parts.group(1).isEmpty() && "tdc".equals(parts.group(2)) ? "0" : parts.group(1);
        if (!rim && parts.group(3) == null && TypedSize.of(Unit.DEGREES, size, 1) instanceof TypedSize.Read deg) {
            return deg.value() < 0 || deg.value() > 90
                    ? refused(text)
                    : new Degrees(before ? deg.value() : -deg.value());
        }
        if (!(TypedSize.of(Unit.MM, size, 1) instanceof TypedSize.Read mm) || mm.value() < 0) {
            return refused(text);
        }
        if (rim) {
            return new RimLength(before ? mm.value() : -mm.value());
        }
        if (parts.group(3) == null) {
            return new Piston(mm.value(), before, 0);
        }
        return TypedSize.of(Unit.DEGREES, parts.group(3), 1) instanceof TypedSize.Read lean
                        && lean.value() >= 0
                        && lean.value() <= 60
                ? new Piston(mm.value(), before, lean.value())
                : new Refused(
                        "'" + Words.shortened(text) + "': a plug hole leans 0 to 60 degrees from the bore's axis.");
    }

    private static Refused refused(String text) {
        return new Refused(
                "'" + Words.shortened(text)
                        + "' does not say where the points opened. Write '25 btdc' in degrees, '2.5 mm btdc' of the piston, '2.9 mm btdc at 30"
                        + " deg' by a gauge in a leaning hole, or '24 mm btdc on the rim' of the flywheel; 0 to 90 degrees, no minus.");
    }
}
