package gudgeon.rebuild.decide;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.List;

/**
 * What an option does to a size that follows from its parts and from what they go with.
 *
 * @param dimension id of the book's dimension
 * @param label what a fitter calls it
 * @param value with its unit and doubt; empty while it can't be worked out
 * @param goes whether the parts go with each other
 * @param sentence the same as a person reads it, and what to do
 */
public record Mate(String dimension, String label, String value, Goes goes, String sentence) {
    /** What parts do to every size that follows from one of them, be they thought of or in hand. */
    public static List<Mate> of(Build build, List<OptionLine> lines) {
        return new Mates(build, new Applied(build, lines)).all();
    }

    /** Whether parts go with each other, as far as is known. */
    public enum Goes {
        TOGETHER("goes together"),
        NOT_TOGETHER("does not go together"),
        UNPROVEN("unproven"),
        NO_LIMITS("no limits in the book"),
        NOT_KNOWN("not known yet");

        private final String words;

        Goes(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }
}
