package gudgeon.bench.web.fit;

import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.fit.LengthUnit;
import java.util.Locale;

/** The system in which lengths are shown and bare numbers are read. */
public enum Lengths {
    MM(LengthUnit.MM, "mm", 1),
    INCH(LengthUnit.INCH, "in", 25.4);

    private final LengthUnit unit;
    private final String symbol;
    private final double mm;

    Lengths(LengthUnit unit, String symbol, double mm) {
        this.unit = unit;
        this.symbol = symbol;
        this.mm = mm;
    }

    /** The system named in an address, metric where none is. */
    public static Lengths named(String name) {
        return name.equals("inch") ? INCH : MM;
    }

    /** Its name in an address. */
    public String written() {
        return this == INCH ? "inch" : "mm";
    }

    /** The unit in which sentences give lengths. */
    LengthUnit unit() {
        return unit;
    }

    /** Symbol of its unit. */
    public String symbol() {
        return symbol;
    }

    /** Length of its unit in mm. */
    public double mm() {
        return mm;
    }

    /** A length in mm as a number of this unit. */
    public String number(double lengthMm) {
        String text = unit.format(lengthMm);
        return plain(text.substring(0, text.indexOf(' ')));
    }

    /** A length in mm with its unit. */
    public String length(double lengthMm) {
        return number(lengthMm) + "\u00a0" + symbol;
    }

    /** A crank angle with its unit; one that would be written 720.0° is 0.0° again. */
    public String angle(double deg) {
        String text = plain(String.format(Locale.ROOT, "%.1f", deg));
        return (text.equals("720.0") ? "0.0" : text) + "°";
    }

    /** A number of a size, without its unit. */
    public String number(double value, Unit unit) {
        if (unit == Unit.MM) {
            return this == MM ? trimmed(value, 3, 2) : number(value);
        }
        return trimmed(value, 3, 0);
    }

    /** A number of a size, without its unit, to as many places at least as its doubt is shown to. */
    public String number(double value, double doubt, Unit unit) {
        String beside = number(doubt, unit);
        int places = beside.contains(".") ? beside.length() - 1 - beside.indexOf('.') : 0;
        String full = number(value, unit);
        int has = full.contains(".") ? full.length() - 1 - full.indexOf('.') : 0;
        String padding = (has == 0 && places > 0 ? "." : "") + "0".repeat(Math.max(0, places - has));
        return full + padding;
    }

    /** The unit in which a size is shown. */
    public String symbol(Unit unit) {
        return unit == Unit.MM ? symbol : unit.symbol();
    }

    private static String trimmed(double value, int most, int least) {
        String text = String.format(Locale.ROOT, "%." + most + "f", value);
        int keep = text.indexOf('.') + least;
        int end = text.length();
        while (end - 1 > keep && text.charAt(end - 1) == '0') {
            end--;
        }
        return plain(text.charAt(end - 1) == '.' ? text.substring(0, end - 1) : text.substring(0, end));
    }

    /** A true minus sign, and none before a nought. */
    private static String plain(String number) {
        boolean nought = number.matches("-0(\\.0*)?");
        return nought ? number.substring(1) : number.replace('-', '−');
    }
}
