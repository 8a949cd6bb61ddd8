package gudgeon.mechanics.seat;

/**
 * Whether there is room for a seat of the width wanted under a small valve. Lengths in mm.
 *
 * @param widthMm seat wanted, along its face, greater than 0
 * @param seatDeg angle of the seat from the plane of its rim
 * @param overhangMm face wanted bare outside the seat, along the slope, 0 or more
 * @param lipMm metal wanted between the seat's inner edge and the throat, on the radius, 0 or more
 */
public record SmallHead(double widthMm, double seatDeg, double overhangMm, double lipMm) {
    /** The least head in mm that gives such a seat over a throat. */
    public double leastHeadMm(double throatMm) {
        return throatMm + 2 * lipMm + 2 * (widthMm + overhangMm) * Math.cos(Math.toRadians(seatDeg));
    }

    /** The widest seat in mm, along its face, that a head leaves room for over a throat; 0 or below means none at all. */
    public double widestSeatMm(double headMm, double throatMm) {
        return widthMm + (headMm - leastHeadMm(throatMm)) / 2 / Math.cos(Math.toRadians(seatDeg));
    }
}
