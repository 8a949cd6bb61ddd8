package gudgeon.rebuild.measure;

/** How a size stands to that of a new part. */
public enum Condition {
    AS_NEW("as new"),
    WORN("worn"),
    /** Too near the edge of a new part's range to tell. */
    NEARLY_NEW("as new or little worn"),
    /** Not measured, or the book does not have the range of a new part. */
    NOT_SAID("");

    private final String words;

    Condition(String words) {
        this.words = words;
    }

    /** The words as a person reads them; empty where nothing is said. */
    public String words() {
        return words;
    }
}
