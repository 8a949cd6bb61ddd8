package gudgeon.mechanics.bore;

/** Whether a bore of some size leaves nothing of the old wall. */
public enum CleansUp {
    /** Proved, wherever the wear is, even on the old centre. */
    ON_ANY_CENTRE,
    /** Proved if the new centre is set to the worn walls where they are worst; on the old centre it may not. */
    ON_A_SHIFTED_CENTRE,
    /** Wear that is even would clean up, wear on one side would not, or the doubt of the readings is too large to say. */
    UNPROVEN,
    /** Proved not to, wherever its centre is. */
    NO
}
