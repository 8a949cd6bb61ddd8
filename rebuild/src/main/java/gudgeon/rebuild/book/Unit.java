package gudgeon.rebuild.book;

import java.util.Locale;

/** The units that sizes are held in once read. */
public enum Unit {
    MM("mm"),
    DEGREES("°"),
    CM3("cm³"),
    KPA("kPa"),
    NEWTON("N"),
    NEWTON_METRE("N·m"),
    CELSIUS("°C"),
    PERCENT("%"),
    /** A plain number, such as a rocker ratio. */
    NONE("");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The unit as a person reads it. */
    public String symbol() {
        return symbol;
    }

    /** A value in this unit as a person reads it, such as "39.012 mm". */
    public String figure(double value) {
        return Words.number(value) + (symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol);
    }

    /** A value with its doubt in this unit, to as many places as the doubt, such as "0.150 ± 0.009 mm". */
    public String figure(double value, double doubt) {
        String least = Words.number(doubt);
        int places = least.contains(".") ? least.length() - 1 - least.indexOf('.') : 0;
        String full = Words.number(value);
        String rounded = String.format(Locale.ROOT, "%." + places + "f", value);
        return (rounded.length() > full.length() ? rounded : full) + " \u00b1 " + figure(doubt);
    }
}
