package gudgeon.mechanics.metrology;

/** What a measured value proves of a size and its limits (ISO 14253-1:2017, clause 5: the zones). */
public enum Zone {
    /** In the limits, and proved to be. */
    IN,
    /** Outside the limits, and proved to be. */
    OUT,
    /** The doubt spans a limit: neither is proved. */
    UNPROVEN
}
