package gudgeon.rebuild.source;

/**
 * Why something has to be bought for a position.
 *
 * @param kind what kind of reason
 * @param count how many, from 1
 * @param sentence the same as a sentence
 */
public record Want(Kind kind, int count, String sentence) {
    /** Why something has to be bought. */
    public enum Kind {
        SINGLE_USE("for one use only"),
        UNDONE("destroyed by opening again"),
        REPLACE("to be replaced"),
        WORN("out of limits"),
        REFUSED("what came was refused"),
        MISSING("not in hand"),
        OPENING("will be destroyed by opening");

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
