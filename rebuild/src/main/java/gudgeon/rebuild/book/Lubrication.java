package gudgeon.rebuild.book;

/** What is on a thread and under a head when it is tightened. */
public enum Lubrication {
    DRY("dry"),
    OILED("oiled"),
    GREASED("greased"),
    LOCKED("with locking compound");

    private final String words;

    Lubrication(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
