package gudgeon.rebuild.desk;

import java.util.Locale;

/**
 * One figure of an answer.
 *
 * @param key stable name for JSON, such as {@code leastClearance}
 * @param label what a fitter calls it
 * @param value in {@code unit}
 * @param unit what it is counted in
 */
public record DeskFigure(String key, String label, double value, Unit unit) {
    private static final double FINER_THAN_ANYONE_ASKS = 1e6;
    private static final double MM_PER_INCH = 25.4;

    /** What figures of the desk are counted in. */
    public enum Unit {
        /** Millimetres; inches are said beside them. */
        MM("mm"),
        /** Megapascals. */
        MPA("MPa"),
        /** Newtons. */
        NEWTON("N"),
        /** Degrees Celsius. */
        CELSIUS("°C");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        /** As it is written behind a number. */
        public String symbol() {
            return symbol;
        }
    }

    public DeskFigure {
        // what sums of decimals leave behind in binary is no figure
        value = Math.rint(value * FINER_THAN_ANYONE_ASKS) / FINER_THAN_ANYONE_ASKS;
    }

    /** The value with its unit, and in inches too where it is a length. */
    public String text() {
        return unit == Unit.MM ? mm(value) : rounded(value, unit == Unit.MPA ? 1 : 0) + " " + unit.symbol();
    }

    /** A length in mm with the same in inches. */
    static String mm(double mm) {
        return rounded(mm, 3) + " mm (" + rounded(mm / MM_PER_INCH, 4) + " in)";
    }

    /** A temperature in whole degrees. */
    static String celsius(double degrees) {
        return rounded(degrees, 0) + " °C";
    }

    static String rounded(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        // no minus before nothing
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
