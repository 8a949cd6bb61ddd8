package gudgeon.rebuild.compare;

/** What can be said of two sizes, their doubts included. */
public enum Likeness {
    /** The two figures are equal. */
    SAME("same"),
    /** They differ by more than the expanded uncertainty of their difference. */
    DIFFERENT("different"),
    /** They differ, but by no more than that. */
    UNPROVEN("difference not proven"),
    /** Only one of the parts has it, or the book states it for one only. */
    ONE_ONLY("one only");

    private final String words;

    Likeness(String words) {
        this.words = words;
    }

    /** The words a person reads. */
    public String words() {
        return words;
    }
}
