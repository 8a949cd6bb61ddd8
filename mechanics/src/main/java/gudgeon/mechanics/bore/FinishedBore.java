package gudgeon.mechanics.bore;

import gudgeon.mechanics.metrology.Quantity;

/**
 * The size to which a bore is to be finished for one measured piston. Lengths in mm.
 *
 * @param leastMm smallest finished diameter
 * @param mostMm largest finished diameter, not below the smallest
 * @param proved whether any bore within these has the clearance wanted, the piston's doubt taken off both ends; if not, the
 *     doubt leaves nothing of the band and these are the plain limits
 */
public record FinishedBore(double leastMm, double mostMm, boolean proved) {
    /**
     * For a piston and the clearance wanted: bore = piston + clearance. The piston's expanded uncertainty (by 2) is kept away
     * from both ends (guard bands, ISO 14253-1), then both are rounded inwards to whole steps.
     *
     * @param pistonMm diameter of the skirt where its maker measures it
     * @param leastClearanceMm least clearance on the diameter
     * @param mostClearanceMm most clearance on the diameter, not below the least
     * @param stepMm step in which sizes are given to the machinist, above 0, usually 0.01 or 0.005
     */
    public static FinishedBore of(Quantity pistonMm, double leastClearanceMm, double mostClearanceMm, double stepMm) {
        if (!(mostClearanceMm >= leastClearanceMm) || !(stepMm > 0)) {
            throw new IllegalArgumentException("clearance goes from least to most and the step is above 0, got "
                    + leastClearanceMm + " to " + mostClearanceMm + " mm in steps of " + stepMm + " mm");
        }
        double guard = 2 * pistonMm.standardUncertainty();
        double low = up(pistonMm.value() + leastClearanceMm + guard, stepMm);
        double high = down(pistonMm.value() + mostClearanceMm - guard, stepMm);
        return low <= high
                ? new FinishedBore(low, high, true)
                : new FinishedBore(pistonMm.value() + leastClearanceMm, pistonMm.value() + mostClearanceMm, false);
    }

    /**
     * The largest diameter to bore to before honing: finished size less what the hone takes off (piston + clearance - allowance,
     * as repair manuals have it).
     *
     * @param honedOffMm what honing takes off the diameter, 0 or more
     */
    public double boredMm(double honedOffMm) {
        return leastMm - honedOffMm;
    }

    /**
     * Wall left in mm at its thinnest, where the centre was moved towards it.
     *
     * @param wallMm wall as it is around the bore
     * @param boreMm diameter of the bore that this wall surrounds
     * @param shiftMm how far the new centre may lie off the old one, 0 or more
     */
    public double wallLeftMm(double wallMm, double boreMm, double shiftMm) {
        return wallMm - (mostMm - boreMm) / 2 - shiftMm;
    }

    /** A hair less than a step is a step: figures such as 39.52 have no exact binary form. */
    private static double up(double mm, double step) {
        return Math.ceil(mm / step - 1e-6) * step;
    }

    private static double down(double mm, double step) {
        return Math.floor(mm / step + 1e-6) * step;
    }
}
