package gudgeon.rebuild.plan;

/**
 * Why a step or check waits.
 *
 * @param kind what it waits for
 * @param id the step, position or check that it waits for
 * @param sentence the same as a sentence
 */
public record Reason(Kind kind, String id, String sentence) {
    /** What a step or check can wait for. */
    public enum Kind {
        STEP("step"),
        PART("part"),
        CHECK("check"),
        /** Paint, sealant or heat. */
        TIME("time");

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
