package gudgeon.mechanics.bolt;

/**
 * Friction of threads and heads as they are put together. Spans are the friction classes of VDI 2230, table A5: C for bright steel
 * without more than what it was delivered with and for adhesives, B with oil or grease. What is usual within them is common practice,
 * no source.
 */
public enum Friction {
    DRY(0.14, 0.17, 0.24),
    OILED(0.08, 0.12, 0.16),
    GREASED(0.08, 0.11, 0.16),
    LOCKED(0.14, 0.16, 0.24);

    private final double least;
    private final double usual;
    private final double most;

    Friction(double least, double usual, double most) {
        this.least = least;
        this.usual = usual;
        this.most = most;
    }

    /** The least coefficient to reckon with: most preload for a torque. */
    public double least() {
        return least;
    }

    /** The usual coefficient. */
    public double usual() {
        return usual;
    }

    /** The greatest coefficient to reckon with: least preload for a torque. */
    public double most() {
        return most;
    }
}
