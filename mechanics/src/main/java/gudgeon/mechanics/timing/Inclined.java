package gudgeon.mechanics.timing;

/**
 * A dial gauge in a hole that leans from the bore's axis, its foot on a flat crown.
 *
 * <p>The foot runs along the hole: while the piston travels down by s, it comes out by s over the cosine of the lean (plane
 * trigonometry). On a domed crown the foot also meets another place of the dome, which this does not know of.
 *
 * @param leanDeg how far the hole leans from the bore's axis, in degrees in [0, 60]
 */
public record Inclined(double leanDeg) {
    private static final double MOST_DEG = 60;

    public Inclined {
        if (!(leanDeg >= 0 && leanDeg <= MOST_DEG)) {
            throw new IllegalArgumentException("a plug hole leans 0 to 60 degrees, got " + leanDeg);
        }
    }

    /** Travel of the piston in mm for a travel of the gauge in mm. */
    public double travelMm(double gaugeMm) {
        return gaugeMm * Math.cos(Math.toRadians(leanDeg));
    }

    /** Travel of the gauge in mm for a travel of the piston in mm. */
    public double gaugeMm(double travelMm) {
        return travelMm / Math.cos(Math.toRadians(leanDeg));
    }
}
