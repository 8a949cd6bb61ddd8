package gudgeon.rebuild.book;

/** The space of the engine that a position lives in. */
public enum Space {
    /** Where oil is. */
    WET("wet"),
    /** Inside, where no oil may come. */
    DRY("dry"),
    /** Where the gas burns or flows. */
    GAS("gas"),
    /** Open air. */
    OUTSIDE("outside");

    private final String word;

    Space(String word) {
        this.word = word;
    }

    /** The word as a book has it and a person reads it. */
    public String word() {
        return word;
    }
}
