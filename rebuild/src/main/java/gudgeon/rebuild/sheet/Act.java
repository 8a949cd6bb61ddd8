package gudgeon.rebuild.sheet;

import java.util.List;

/**
 * A step or check at its place in the order.
 *
 * @param number its place, from 1
 * @param id its id in the book
 * @param kind what it is
 * @param name what is done or proved
 * @param cautions what can hurt, to be read before anything else
 * @param passages all else there is to say of it
 */
public record Act(int number, String id, Kind kind, String name, List<String> cautions, List<Passage> passages) {
    public Act {
        cautions = List.copyOf(cautions);
        passages = List.copyOf(passages);
    }

    /** What an act is. */
    public enum Kind {
        STEP("step"),
        CHECK("check"),
        /** A check that holds a step. */
        HOLD_POINT("hold point");

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
