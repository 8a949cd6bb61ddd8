package gudgeon.rebuild.journal;

/** Which way round a part went in. */
public enum Way {
    /** Not looked at, or it does not matter. */
    NOT_SAID("not said"),
    AS_MARKED("as the mark says"),
    TURNED("turned by half a turn");

    private final String words;

    Way(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
