package gudgeon.rebuild.start;

import java.util.List;

/**
 * One thing of the list before the first start.
 *
 * @param kind what it is of
 * @param id id of the check, step, position, joint, fluid or point
 * @param name what it is, as a heading
 * @param sentence where it stands, or what to do and to look for
 * @param standing where it stands
 * @param stops whether the start is not to be signed without a reason while it is open
 * @param evidence numbers of the entries that tell of it
 * @param cautions what can hurt in doing it
 */
public record StartItem(
        Kind kind,
        String id,
        String name,
        String sentence,
        Standing standing,
        boolean stops,
        List<Long> evidence,
        List<String> cautions) {
    public StartItem {
        evidence = List.copyOf(evidence);
        cautions = List.copyOf(cautions);
    }

    /** What something of the list is of, in the order in which the list is gone through. */
    public enum Kind {
        ALARM("Alarms that stand"),
        CHECK("Checks"),
        STEP("Steps not done"),
        PLACE("Places that are empty"),
        JOINT("Joints"),
        PART("Parts of which something was not said"),
        FLUID("What is filled in"),
        POINT("At the engine, by hand and eye");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The kind as a person reads it, as a heading. */
        public String words() {
            return words;
        }
    }

    /** Where something of the list stands. */
    public enum Standing {
        OPEN("open"),
        /** Looked at, and not as it should be. */
        NOT_GOOD("not as it should be"),
        /** Left out knowingly. */
        WAIVED("waived"),
        GOOD("good");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }

        /** Whether something is still to be done. */
        public boolean isOpen() {
            return this == OPEN || this == NOT_GOOD;
        }
    }

    /** Whether it is open and the start is not to be signed over it. */
    public boolean holds() {
        return stops && standing.isOpen();
    }

    /** Whether it is ticked here, and not in another room. */
    public boolean isTicked() {
        return kind == Kind.POINT || kind == Kind.FLUID;
    }
}
