package gudgeon.bench.print.fasten;

/**
 * A rectangle of a joint's face.
 *
 * @param left its left side, mm
 * @param bottom its lower side, mm
 * @param width across, mm
 * @param height upwards, mm
 */
public record Window(double left, double bottom, double width, double height) {
    /** Its right side, mm. */
    public double right() {
        return left + width;
    }

    /** Its upper side, mm. */
    public double top() {
        return bottom + height;
    }

    /** Whether all of a circle lies in it. */
    public boolean holds(double x, double y, double radius) {
        return x - radius >= left && x + radius <= right() && y - radius >= bottom && y + radius <= top();
    }

    /** Whether it has any part of a circle's surrounding square. */
    public boolean meets(double x, double y, double radius) {
        return x + radius > left && x - radius < right() && y + radius > bottom && y - radius < top();
    }
}
