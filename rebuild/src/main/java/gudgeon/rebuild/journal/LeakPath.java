package gudgeon.rebuild.journal;

/** Where air let into the cylinder comes out. */
public enum LeakPath {
    INLET("the inlet"),
    EXHAUST("the exhaust"),
    BREATHER("the breather"),
    HEAD_JOINT("the head joint"),
    PLUG("the plug"),
    NOWHERE("nowhere");

    private final String words;

    LeakPath(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
