package gudgeon.mechanics.plane;

/**
 * A point of a flat face.
 *
 * @param xMm to the right, in mm, finite
 * @param yMm upwards, in mm, finite
 */
public record FacePoint(double xMm, double yMm) {
    public FacePoint {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException("a point of a face is finite, got " + xMm + " and " + yMm);
        }
    }

    /** The distance to another point, in mm. */
    public double distanceMm(FacePoint other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
