package gudgeon.rebuild.fasten;

/** Whether a length is right for a hole. */
public enum LengthVerdict {
    RIGHT("right"),
    DOUBTFUL("not proved right"),
    TOO_SHORT("too short: too little thread holds"),
    BOTTOMS("too long: it bottoms before it clamps"),
    STANDS_IN("too long: it stands into what is behind");

    private final String words;

    LengthVerdict(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }

    /** Whether something breaks or strips with it. */
    public boolean isDangerous() {
        return this != RIGHT && this != DOUBTFUL;
    }
}
