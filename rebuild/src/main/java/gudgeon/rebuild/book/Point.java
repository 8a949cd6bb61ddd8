package gudgeon.rebuild.book;

/**
 * A point of a joint's face, seen from outside.
 *
 * @param x to the right, in mm
 * @param y upwards, in mm
 */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point has finite coordinates, got " + x + " and " + y);
        }
    }
}
