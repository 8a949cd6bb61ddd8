package gudgeon.rebuild.journal;

/** What a person looks for the cause of. */
public enum Trouble {
    TIGHT_SPOT("it goes tight as it is turned"),
    POOR_SEALING("it does not seal"),
    NO_SHIFT("it does not select its gears"),
    SLIPS("it slips"),
    NO_SPARK("it has no spark"),
    NO_OIL("no oil comes");

    private final String words;

    Trouble(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
