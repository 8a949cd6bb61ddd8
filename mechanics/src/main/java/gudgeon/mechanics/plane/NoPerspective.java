package gudgeon.mechanics.plane;

/** No picture of a flat face has its known points where they were marked. */
public final class NoPerspective extends Exception {
    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** With what is wrong. */
    public NoPerspective(Kind kind) {
        super(kind.words);
        this.kind = kind;
    }

    /** What is wrong with the marks. */
    public Kind kind() {
        return kind;
    }

    /** What can be wrong with marks. */
    public enum Kind {
        TOO_FEW("fewer than four points are marked"),
        IN_LINE("three of the corners are in line, or two are one"),
        CROSSED("the corners are not in the order of going round"),
        MIRRORED("the corners go round the wrong way");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }
}
