package gudgeon.rebuild.measure;

/** What can be said of a size and its limits. */
public enum Outcome {
    IN_LIMITS("in limits"),
    OUT_OF_LIMITS("out of limits"),
    /** Neither is proved. */
    UNPROVEN("unproven"),
    /** It was measured, and the book has no limit for it. */
    NO_LIMITS("no limits known"),
    NOT_MEASURED("not measured");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
