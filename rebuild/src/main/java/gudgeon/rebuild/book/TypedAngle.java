package gudgeon.rebuild.book;

import gudgeon.mechanics.timing.Disc;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A crank angle as a person types it: "12 btdc", "45 abdc", "tdc", or a bare number as a degree disc shows it. */
public sealed interface TypedAngle {
    /** A dead centre named behind an angle, and the side of it. */
    Pattern REFERENCE = Pattern.compile("\\b(b|a)(tdc|bdc)\\b", Pattern.CASE_INSENSITIVE);

    /** Farthest from a dead centre that an angle is written; beyond it the other is nearer. */
    double FARTHEST_DEG = 150;

    /**
     * From a dead centre.
     *
     * @param deg degrees after it, negative before
     * @param top whether it is top dead centre
     */
    record From(double deg, boolean top) implements TypedAngle {}

    /**
     * A bare number: degrees after firing top dead centre, or what a disc reads, which begins anew every turn.
     *
     * @param deg in [0, 720)
     */
    record Bare(double deg) implements TypedAngle {}

    /**
     * It can't be used.
     *
     * @param sentence why, and what to type
     */
    record Refused(String sentence) implements TypedAngle {}

    /** Reads what was typed. */
    static TypedAngle of(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.equals("tdc") || plain.equals("bdc")) {
            return new From(0, plain.equals("tdc"));
        }
        Matcher reference = REFERENCE.matcher(plain);
        boolean from = reference.find();
        String number = from
                ? (plain.substring(0, reference.start()) + " " + plain.substring(reference.end()))
                        .replaceAll("\\s+", " ")
                        .strip()
                : plain;
        TypedSize typed = TypedSize.of(Unit.DEGREES, number, 1);
        if (!(typed instanceof TypedSize.Read read)) {
            return new Refused(
                    ((TypedSize.Refused) typed).sentence() + " An angle is written 12 btdc, 45 abdc or 348.");
        }
        return from ? from(text, read.value(), reference) : bare(text, read.value());
    }

    private static TypedAngle from(String text, double deg, Matcher reference) {
        if (deg < 0 || deg > FARTHEST_DEG) {
            return new Refused("'" + Words.shortened(text) + "' is out of range: an angle from a dead centre is 0 to "
                    + Words.number(FARTHEST_DEG) + " degrees, with b for before or a for after it.");
        }
        return new From(
                reference.group(1).equals("b") ? -deg : deg, reference.group(2).equals("tdc"));
    }

    private static TypedAngle bare(String text, double deg) {
        return deg >= 0 && deg < 720
                ? new Bare(deg)
                : new Refused(
                        "'" + Words.shortened(text)
                                + "' is out of range: a bare crank angle is 0 up to, but not, 720 degrees after firing top dead centre.");
    }

    /**
     * The angle in degrees from firing top dead centre at which a valve of that kind does so. An exhaust opens about 180 and closes
     * about 360, an inlet opens about 360 and closes about 540; a bare number below 360 is taken for the turn that lies nearer.
     *
     * @throws IllegalArgumentException if the angle can't be used
     */
    default double crankDeg(ValveEntry.Kind kind, boolean opens) {
        if (this instanceof From from) {
            return centreDeg(kind, from.top()) + from.deg();
        }
        if (this instanceof Bare bare) {
            boolean top = opens == (kind == ValveEntry.Kind.INLET);
            return bare.deg() >= 360 ? bare.deg() : Disc.nearest(bare.deg(), centreDeg(kind, top));
        }
        throw new IllegalArgumentException("no angle: " + this);
    }

    /** The dead centre in degrees about which a valve of that kind opens or closes. */
    static double centreDeg(ValveEntry.Kind kind, boolean top) {
        return top ? 360 : kind == ValveEntry.Kind.EXHAUST ? 180 : 540;
    }
}
