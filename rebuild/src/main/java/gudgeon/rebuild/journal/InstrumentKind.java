package gudgeon.rebuild.journal;

/** A kind of measuring instrument. */
public enum InstrumentKind {
    CALLIPER("calliper"),
    MICROMETER("micrometer"),
    BORE_GAUGE("bore gauge"),
    SMALL_HOLE_GAUGE("small-hole gauge"),
    DEPTH_GAUGE("depth gauge"),
    HEIGHT_GAUGE("height gauge"),
    DIAL_GAUGE("dial gauge"),
    FEELER_GAUGES("feeler gauges"),
    STRAIGHT_EDGE("straight edge"),
    SQUARE("square"),
    SPRING_TESTER("spring tester"),
    PRESSURE_GAUGE("pressure gauge"),
    BURETTE("burette"),
    DEGREE_DISC("degree disc"),
    SCALE_RULE("rule"),
    THERMOMETER("thermometer"),
    METER("electric meter");

    private final String words;

    InstrumentKind(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
