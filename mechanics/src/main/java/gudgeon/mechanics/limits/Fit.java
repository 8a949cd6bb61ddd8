package gudgeon.mechanics.limits;

/**
 * A fit by ISO 286: "20 H7/k6".
 *
 * @param hole the limits of the hole
 * @param shaft the limits of the shaft, of the same nominal size
 */
public record Fit(ToleranceClass hole, ToleranceClass shaft) {
    /** What a fit may turn out as. */
    public enum Kind {
        /** Never tight. */
        CLEARANCE,
        /** Loose or tight, as the two parts happen to be. */
        TRANSITION,
        /** Always tight. */
        INTERFERENCE
    }

    /**
     * Reads a designation such as "20 H7/k6"; the hole stands first, as ISO 286-1 writes it, but either order is taken.
     *
     * @throws UnknownDesignation with all that is wrong with it
     */
    public static Fit of(String designation) {
        return Designation.read(designation).pair();
    }

    /** Least clearance, micrometres: smallest hole less largest shaft; below zero it is the greatest interference. */
    public double leastClearanceMicrometres() {
        return hole.lowerMicrometres() - shaft.upperMicrometres();
    }

    /** Most clearance, micrometres: largest hole less smallest shaft; below zero it is the least interference. */
    public double mostClearanceMicrometres() {
        return hole.upperMicrometres() - shaft.lowerMicrometres();
    }

    /** ISO 286-1:2010, 3.3.2: a clearance fit may have a least clearance of zero, an interference fit a least interference of zero. */
    public Kind kind() {
        if (leastClearanceMicrometres() >= 0) {
            return Kind.CLEARANCE;
        }
        return mostClearanceMicrometres() <= 0 ? Kind.INTERFERENCE : Kind.TRANSITION;
    }
}
