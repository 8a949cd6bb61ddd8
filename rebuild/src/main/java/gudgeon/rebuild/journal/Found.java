package gudgeon.rebuild.journal;

/** How an engine was found. */
public enum Found {
    /** Together: every part counts as in its place until it is taken off. */
    TOGETHER("together"),
    /** In pieces: no part counts as in its place until it is fitted. */
    IN_PIECES("in pieces");

    private final String words;

    Found(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
