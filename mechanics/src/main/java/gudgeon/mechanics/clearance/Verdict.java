package gudgeon.mechanics.clearance;

/** What can be said of a gap, its doubt included. */
public enum Verdict {
    /** Value less expanded uncertainty is at least what is wanted. */
    CLEARS,
    /** Surely positive, and surely short of what is wanted. */
    CLOSE,
    /** Value plus expanded uncertainty is below zero. */
    TOUCHES,
    /** The doubt spans a bound. */
    UNPROVEN;

    /**
     * The verdict on a gap.
     *
     * @param valueMm the gap
     * @param expandedUncertaintyMm its expanded uncertainty, 0 or more
     * @param wantedMm the least gap wanted, 0 or more
     */
    public static Verdict of(double valueMm, double expandedUncertaintyMm, double wantedMm) {
        double low = valueMm - expandedUncertaintyMm;
        double high = valueMm + expandedUncertaintyMm;
        if (low >= wantedMm) {
            return CLEARS;
        }
        if (high < 0) {
            return TOUCHES;
        }
        return low > 0 && high < wantedMm ? CLOSE : UNPROVEN;
    }
}
