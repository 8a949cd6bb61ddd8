package gudgeon.rebuild.journal;

/** What of the ignition was read. */
public enum IgnitionSize {
    OPENS("where the points open"),
    GAP("the points gap"),
    DWELL("the dwell");

    private final String words;

    IgnitionSize(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
