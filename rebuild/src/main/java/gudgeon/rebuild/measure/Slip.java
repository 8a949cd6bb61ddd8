package gudgeon.rebuild.measure;

/**
 * A slip that would explain a reading that is hard to believe. It is asked about and never put right by itself.
 *
 * @param kind what slip
 * @param meant what was perhaps meant, as it would be written; empty where that can't be said
 * @param sentence the question
 */
public record Slip(Kind kind, String meant, String sentence) {
    /** The slips of hand and eye that are looked for. */
    public enum Kind {
        INCHES("inches typed where millimetres are meant"),
        MILLIMETRES("millimetres typed where inches are meant"),
        THOU("thousandths of an inch typed where millimetres are meant"),
        POINT("a slip of the decimal point"),
        SIGN("the wrong sign"),
        SWAPPED("two digits swapped"),
        DIGIT("one digit wrong"),
        /** Two readings of one place lie further apart than their instruments err. */
        APART("two readings that do not agree"),
        /** The instrument named can't have read it. */
        BEYOND("a value that the instrument does not reach"),
        /** No slip explains it, and no part is that worn: another thing was measured, or another figure read. */
        FAR("a value far from what is expected");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }
}
