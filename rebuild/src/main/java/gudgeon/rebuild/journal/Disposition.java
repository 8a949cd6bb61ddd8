package gudgeon.rebuild.journal;

/** What is to become of a part. */
public enum Disposition {
    USE_AGAIN("use again"),
    CLEAN("clean"),
    REPAIR("repair"),
    REPLACE("replace");

    private final String words;

    Disposition(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
