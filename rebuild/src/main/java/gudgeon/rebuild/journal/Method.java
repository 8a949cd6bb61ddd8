package gudgeon.rebuild.journal;

/** How a part that sits tight is put in. */
public enum Method {
    WARMED("dropped in, what it sits in warmed", true),
    COOLED("dropped in, itself cooled", true),
    DRAWN_IN("drawn in with a tool", false),
    PRESSED_COLD("pressed in cold", false),
    DRIVEN_COLD("driven in cold", false);

    private final String words;
    private final boolean byHeat;

    Method(String words, boolean byHeat) {
        this.words = words;
        this.byHeat = byHeat;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }

    /** Whether a difference of temperature makes the room for it. */
    public boolean byHeat() {
        return byHeat;
    }

    /** What can hurt while it is done so, a sentence; common practice, no source, and the maker's manual comes first. */
    public String caution() {
        return byHeat
                ? "Hot and very cold metal burns: gloves and goggles, no open flame, nothing near that catches fire, and no"
                        + " warmer than the maker says."
                : "Goggles on, press or draw square and by the ring that takes the fit; a hardened race that is struck"
                        + " throws splinters.";
    }
}
