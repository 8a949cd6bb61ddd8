package gudgeon.mechanics.thread;

/** A thread or a strength class that is not held; the message is a sentence that says what to write. */
public final class UnknownFastener extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** With a sentence for the person who wrote it. */
    public UnknownFastener(String sentence) {
        super(sentence);
    }

    /** What is wrong, and what to write. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
