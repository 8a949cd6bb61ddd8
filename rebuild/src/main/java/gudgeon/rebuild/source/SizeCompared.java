package gudgeon.rebuild.source;

import java.util.List;

/**
 * One size of a part that came, beside what it should be.
 *
 * @param id id of the book's dimension, or the key that the book's figures have for it
 * @param label what a fitter calls it
 * @param old as measured on the part that came off; empty if it was not
 * @param booked as the book has it of a new part, else its limits, else its figure; empty if it has none
 * @param ordered as ordered; empty if nothing was said
 * @param found as measured on the part that came; empty if it was not
 * @param mates what it makes with the parts it touches, sentences
 * @param agrees how it stands
 * @param sentence the same as a sentence
 */
public record SizeCompared(
        String id,
        String label,
        String old,
        String booked,
        String ordered,
        String found,
        List<String> mates,
        Agrees agrees,
        String sentence) {
    public SizeCompared {
        mates = List.copyOf(mates);
    }

    /** How a size of a part that came stands. */
    public enum Agrees {
        YES("agrees"),
        NO("does not agree"),
        UNPROVEN("unproven"),
        /** Measured, and neither the book nor the order says what it should be. */
        NOTHING_TO_COMPARE("nothing to compare it with"),
        NOT_MEASURED("still to be measured");

        private final String words;

        Agrees(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }
}
