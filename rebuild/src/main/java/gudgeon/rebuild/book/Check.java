package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;

/**
 * A proof. One that {@link #holds} a step is a hold point.
 *
 * @param id its name in the book
 * @param name what is proved, as a fitter says it
 * @param how how it is done
 * @param instructions how it is done, sentences
 * @param clears its suspects: positions or steps that a pass clears
 * @param with positions that must be in place to do it
 * @param needs steps that must be done first
 * @param after checks that must have passed before this one can be believed
 * @param disturbedBy steps or positions whose doing or undoing makes a pass void, beside its suspects and what it is done with
 * @param disturbedByBlasting whether blast cleaning of a suspect makes a pass void
 * @param holds steps that may not begin before it has passed or was knowingly waived
 * @param expect what a measured one should read, if the book says so
 * @param late why it can only be done when its suspects are covered; empty for one that can and should be done before
 * @param tools what it takes
 * @param minutes likely time of work; 0 where the book does not say
 * @param cautions what can hurt, sentences
 * @param where where it stands in the file
 */
public record Check(
        String id,
        String name,
        How how,
        List<String> instructions,
        List<String> clears,
        List<String> with,
        List<String> needs,
        List<String> after,
        List<String> disturbedBy,
        boolean disturbedByBlasting,
        List<String> holds,
        Optional<Expect> expect,
        String late,
        List<String> tools,
        int minutes,
        List<String> cautions,
        Where where) {
    public Check {
        instructions = List.copyOf(instructions);
        clears = List.copyOf(clears);
        with = List.copyOf(with);
        needs = List.copyOf(needs);
        after = List.copyOf(after);
        disturbedBy = List.copyOf(disturbedBy);
        holds = List.copyOf(holds);
        tools = List.copyOf(tools);
        cautions = List.copyOf(cautions);
    }

    /** How a check is done. */
    public enum How {
        /** Read off an instrument. */
        MEASURED("measured"),
        /** Tried by hand. */
        TRIED("tried by hand"),
        /** Worked out by Gudgeon from measured sizes. */
        COMPUTED("computed"),
        /** Looked at. */
        SEEN("seen");

        private final String words;

        How(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** Whether it holds a step. */
    public boolean isHoldPoint() {
        return !holds.isEmpty();
    }
}
