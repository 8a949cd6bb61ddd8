package gudgeon.rebuild.journal;

/** Which way the crank was turned. */
public enum Turning {
    FORWARD("forward"),
    BACKWARD("backward");

    private final String words;

    Turning(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }
}
