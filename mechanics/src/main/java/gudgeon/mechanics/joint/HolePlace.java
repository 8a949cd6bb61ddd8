package gudgeon.mechanics.joint;

/**
 * Where a hole lies in the face of its joint.
 *
 * @param xMm to the right, mm, finite
 * @param yMm upwards, mm, finite
 */
public record HolePlace(double xMm, double yMm) {
    public HolePlace {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException("a hole lies at finite coordinates, got " + xMm + " and " + yMm);
        }
    }

    /** Distance from another in mm. */
    public double fromMm(HolePlace other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
