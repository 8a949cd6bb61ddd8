package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Step;
import java.util.List;
import java.util.OptionalLong;

/**
 * Where a check stands.
 *
 * @param status where it stands
 * @param at number of the entry that says so, 0 if none does
 * @param reading what was read, may be empty
 * @param remark what was seen, or why it was waived; may be empty
 * @param outOfTurn checks that must come before it and that did not stand as passed when it was done
 * @param voidedBy number of the entry that disturbed what a pass relied on
 */
public record CheckState(
        Status status, long at, String reading, String remark, List<String> outOfTurn, OptionalLong voidedBy) {
    static final CheckState OPEN = new CheckState(Status.OPEN, 0, "", "", List.of(), OptionalLong.empty());

    static final CheckState AS_FOUND = new CheckState(Status.AS_FOUND, 0, "", "", List.of(), OptionalLong.empty());

    public CheckState {
        outOfTurn = List.copyOf(outOfTurn);
    }

    /** Where a check stands. */
    public enum Status {
        OPEN("not done"),
        PASSED("passed"),
        FAILED("failed"),
        WAIVED("waived"),
        /** Passed once, and what it relied on was disturbed since. */
        VOID("void again"),
        /** Not done in this rebuild, and nothing that it proves was disturbed in it. */
        AS_FOUND("as found");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** Whether it lets a step it holds go on. */
    public boolean lets() {
        return status == Status.PASSED || status == Status.WAIVED || status == Status.AS_FOUND;
    }

    /**
     * Whether it lets that step go on. A step that fits nothing, such as the first start, is held for its own sake and not for what it
     * buries, so that how the engine was found is no proof for it.
     */
    public boolean lets(Step step) {
        return status == Status.AS_FOUND ? !step.fits().isEmpty() : lets();
    }

    CheckState voided(long by) {
        return switch (status) {
            case PASSED -> new CheckState(Status.VOID, at, reading, remark, outOfTurn, OptionalLong.of(by));
            case AS_FOUND -> OPEN;
            case OPEN, FAILED, WAIVED, VOID -> this;
        };
    }
}
