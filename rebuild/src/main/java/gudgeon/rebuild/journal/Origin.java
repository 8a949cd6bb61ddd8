package gudgeon.rebuild.journal;

/** Where a part comes from. */
public enum Origin {
    ORIGINAL("original, new"),
    PATTERN("pattern"),
    USED("used"),
    MADE("made here");

    private final String words;

    Origin(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
