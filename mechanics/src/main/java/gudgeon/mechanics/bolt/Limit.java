package gudgeon.mechanics.bolt;

/** What gives way first when a fastener is tightened too far. */
public enum Limit {
    /** The bolt yields. */
    BOLT,
    /** A thread strips. */
    THREAD,
    /** The metal under the head is pressed in. */
    BEARING
}
