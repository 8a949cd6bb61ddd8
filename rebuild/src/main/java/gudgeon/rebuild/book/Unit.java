package gudgeon.rebuild.book;

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
}
