package gudgeon.mechanics.plane;

/**
 * A point of a picture.
 *
 * @param across from its left edge, in picture points, finite
 * @param down from its upper edge, in picture points, finite
 */
public record Pixel(double across, double down) {
    public Pixel {
        if (!Double.isFinite(across) || !Double.isFinite(down)) {
            throw new IllegalArgumentException("a point of a picture is finite, got " + across + " and " + down);
        }
    }

    /** The same point moved, in picture points. */
    Pixel moved(double byAcross, double byDown) {
        return new Pixel(across + byAcross, down + byDown);
    }
}
