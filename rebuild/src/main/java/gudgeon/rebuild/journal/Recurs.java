package gudgeon.rebuild.journal;

/** How often a tight spot comes back as the crank is turned on. */
public enum Recurs {
    NOT_SAID("not said how often"),
    EVERY_TURN("every turn"),
    EVERY_SECOND_TURN("every second turn");

    private final String words;

    Recurs(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
