package gudgeon.mechanics.seat;

/**
 * A valve seat of three cuts: the seat itself, a flatter cut outside it that faces the chamber, a steeper one inside it that
 * opens to the throat. Lengths in mm; angles in degrees from the plane of the seat's rim, so that a throat cut is steeper than
 * the seat. Cutters go straight into the head, along the valve's stem.
 *
 * <p>A cone of angle a narrows by 1/tan a on the radius for each mm further in, so an edge between two cones whose tangents are p
 * and q moves by 1/(q - p) on the radius for each mm that one of them goes in. Own geometry, no source.
 *
 * @param insideMm diameter of the seat's inner edge
 * @param outsideMm diameter of its outer edge, larger
 * @param topDeg the outer cut, about 15 to 30, flatter than the seat
 * @param seatDeg the seat, 30 or 45 as a rule
 * @param throatDeg the inner cut, about 60 to 75, steeper than the seat and below 90
 */
public record SeatCuts(double insideMm, double outsideMm, double topDeg, double seatDeg, double throatDeg) {
    public SeatCuts {
        if (!(insideMm > 0 && outsideMm > insideMm)) {
            throw new IllegalArgumentException("a seat lies between an inner and a larger outer diameter, got "
                    + insideMm + " and " + outsideMm + " mm");
        }
        if (!(topDeg > 0 && seatDeg > topDeg && throatDeg > seatDeg && throatDeg < 90)) {
            throw new IllegalArgumentException("the cuts get steeper inwards, between 0 and 90 degrees, got " + topDeg
                    + ", " + seatDeg + ", " + throatDeg);
        }
    }

    /** Width of the seat, along its face. */
    public double widthMm() {
        return (outsideMm - insideMm) / 2 / Math.cos(Math.toRadians(seatDeg));
    }

    /**
     * The seat after each cutter went further in by so much.
     *
     * @param topMm how far the outer cutter went in: brings the outer edge inwards, leaves the valve where it is
     * @param seatMm how far the seat cutter went in: widens the seat both ways, and sinks the valve by exactly as much
     * @param throatMm how far the inner cutter went in: brings the inner edge outwards, leaves the valve where it is
     * @throws IllegalArgumentException if nothing of the seat would be left
     */
    public SeatCuts cut(double topMm, double seatMm, double throatMm) {
        double inner = insideMm + 2 * (throatMm - seatMm) / (tan(throatDeg) - tan(seatDeg));
        double outer = outsideMm + 2 * (seatMm - topMm) / (tan(seatDeg) - tan(topDeg));
        return new SeatCuts(inner, outer, topDeg, seatDeg, throatDeg);
    }

    /**
     * How far the outer cutter must go in to bring the outer edge to a diameter, 0 or more.
     *
     * @param wantedMm diameter wanted, not above the present one
     */
    public double topCutMm(double wantedMm) {
        return Math.max(0, (outsideMm - wantedMm) / 2 * (tan(seatDeg) - tan(topDeg)));
    }

    /**
     * How far the inner cutter must go in to bring the inner edge to a diameter, 0 or more.
     *
     * @param wantedMm diameter wanted, not below the present one
     */
    public double throatCutMm(double wantedMm) {
        return Math.max(0, (wantedMm - insideMm) / 2 * (tan(throatDeg) - tan(seatDeg)));
    }

    private static double tan(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }
}
