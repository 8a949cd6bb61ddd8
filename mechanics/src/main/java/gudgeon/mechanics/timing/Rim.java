package gudgeon.mechanics.timing;

/**
 * The rim of a flywheel or disc that turns with the crank.
 *
 * @param diameterMm its diameter where marks are made, in mm, above 0
 */
public record Rim(double diameterMm) {
    public Rim {
        if (!(diameterMm > 0) || !Double.isFinite(diameterMm)) {
            throw new IllegalArgumentException("a rim's diameter is above 0 mm, got " + diameterMm);
        }
    }

    /** Length in mm along the rim that goes by in some degrees of the crank. */
    public double arcMm(double deg) {
        return Math.toRadians(deg) * diameterMm / 2;
    }

    /** Degrees of the crank in which a length in mm along the rim goes by. */
    public double deg(double arcMm) {
        return Math.toDegrees(2 * arcMm / diameterMm);
    }
}
