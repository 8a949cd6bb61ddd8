package gudgeon.mechanics.limits;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * What letters behind a bearing's number commonly mean. Groups of radial clearance are those of ISO 5753-1; the rest are common
 * designations of the trade, from memory.
 */
public enum BearingSuffix {
    /** Less clearance than group 2; outside ISO 5753-1, from memory. */
    CLEARANCE_1("C1"),
    /** Less radial clearance than normal. */
    CLEARANCE_2("C2"),
    /** Normal radial clearance; as a rule left off. */
    CLEARANCE_NORMAL("CN", "C0"),
    /** More radial clearance than normal. */
    CLEARANCE_3("C3"),
    /** More radial clearance than group 3. */
    CLEARANCE_4("C4"),
    /** More radial clearance than group 4. */
    CLEARANCE_5("C5"),
    /** Metal shield on one side. */
    SHIELD("Z"),
    /** Metal shields on both sides. */
    SHIELDS("ZZ", "2Z"),
    /** Rubbing seal on one side. */
    SEAL("RS"),
    /** Rubbing seals on both sides. */
    SEALS("2RS"),
    /** Groove for a snap ring in the outer ring. */
    GROOVE("N"),
    /** Groove in the outer ring, with its snap ring. */
    SNAP_RING("NR"),
    /** Tapered bore, 1 in 12. */
    TAPERED("K");

    private final String letters;
    private final String otherwise;

    BearingSuffix(String letters) {
        this(letters, letters);
    }

    BearingSuffix(String letters, String otherwise) {
        this.letters = letters;
        this.otherwise = otherwise;
    }

    /** The suffix that a group of letters begins with, the longest that fits. */
    static Optional<BearingSuffix> leading(String group) {
        return Arrays.stream(values())
                .filter(suffix -> !suffix.writtenIn(group).isEmpty())
                .max(Comparator.comparingInt(
                        (BearingSuffix suffix) -> suffix.writtenIn(group).length()));
    }

    /** As it is written at the front of a group of letters; empty when it isn't. */
    String writtenIn(String group) {
        if (group.startsWith(letters)) {
            return letters;
        }
        return group.startsWith(otherwise) ? otherwise : "";
    }

    /** As it is usually written. */
    public String letters() {
        return letters;
    }
}
