package gudgeon.mechanics.bore;

import gudgeon.mechanics.metrology.Quantity;

/** End gaps of piston rings. Lengths in mm. */
public final class RingGap {
    /** Least gap over bore for iron rings in an air-cooled engine: common practice, no source. */
    private static final double LEAST_OF_BORE = 0.0035;
    /** Most gap over bore when new: common practice, no source. */
    private static final double MOST_OF_BORE = 0.0045;

    private RingGap() {}

    /**
     * The gap that a ring will have in another bore: its own length does not change, so the gap grows with the bore's
     * circumference.
     *
     * @param gapMm gap as measured
     * @param measuredInMm diameter of the bore where the ring lay square when it was measured
     * @param boreMm diameter of the other bore; its doubts are taken as independent of the first's
     */
    public static Quantity inBore(Quantity gapMm, Quantity measuredInMm, Quantity boreMm) {
        return gapMm.plus(boreMm.minus(measuredInMm).times(Math.PI));
    }

    /** The least gap usual for a bore where the maker's figure isn't known; a rule of thumb. */
    public static double usualLeastMm(double boreMm) {
        return LEAST_OF_BORE * boreMm;
    }

    /** The most gap usual for new rings where the maker's figure isn't known; a rule of thumb. */
    public static double usualMostMm(double boreMm) {
        return MOST_OF_BORE * boreMm;
    }
}
