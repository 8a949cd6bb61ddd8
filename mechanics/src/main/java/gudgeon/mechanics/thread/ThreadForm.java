package gudgeon.mechanics.thread;

/**
 * Profile of a thread. Sizes follow from the pitch p: pitch diameter d - depth p, core of the screw d - 2 core p, minor
 * diameter of the hole's thread d - 2 minor p.
 */
public enum ThreadForm {
    /** ISO 68-1; core with the rounded root of ISO 898-1, 17H/24. */
    ISO_METRIC(30, 0.649519, 0.613435, 0.541266),
    /** ASME B1.1, of the same profile; core such that the stress area is that of its appendix, π/4 (d - 0.9743 p)² (from memory). */
    UNIFIED(30, 0.649519, 0.649541, 0.541266),
    /** BS 84 (from memory). */
    WHITWORTH(27.5, 0.640327, 0.640327, 0.640327),
    /** BS 93 (from memory). */
    BRITISH_ASSOCIATION(23.75, 0.6, 0.6, 0.6),
    /** BS 811, formerly CEI (from memory). */
    CYCLE(30, 0.5327, 0.5327, 0.5327);

    private final double halfAngleDeg;
    private final double pitchDepth;
    private final double coreDepth;
    private final double minorDepth;

    ThreadForm(double halfAngleDeg, double pitchDepth, double coreDepth, double minorDepth) {
        this.halfAngleDeg = halfAngleDeg;
        this.pitchDepth = pitchDepth;
        this.coreDepth = coreDepth;
        this.minorDepth = minorDepth;
    }

    /** Half the angle between the flanks, degrees. */
    public double halfAngleDeg() {
        return halfAngleDeg;
    }

    /** Tangent of half the angle between the flanks. */
    public double tanHalfAngle() {
        return Math.tan(Math.toRadians(halfAngleDeg));
    }

    double pitchDepth() {
        return pitchDepth;
    }

    double coreDepth() {
        return coreDepth;
    }

    double minorDepth() {
        return minorDepth;
    }
}
