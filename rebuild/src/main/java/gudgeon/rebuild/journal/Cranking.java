package gudgeon.rebuild.journal;

/** How the cylinder was when its pressure was read. */
public enum Cranking {
    DRY("dry"),
    WITH_OIL("with a spoonful of oil in it");

    private final String words;

    Cranking(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
