package gudgeon.mechanics.clearance;

/** Finds the gaps of a top end over the whole cycle. Holds scratch space: one sweep per thread. */
public final class Sweep {
    /** All gaps of the top end. */
    public Gaps gaps(TopEnd topEnd) {
        throw new IllegalStateException("being written: " + topEnd);
    }
}
