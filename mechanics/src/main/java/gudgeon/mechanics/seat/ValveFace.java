package gudgeon.mechanics.seat;

/**
 * The ground face of a valve's head. Lengths in mm.
 *
 * @param headMm diameter of the head, which is the face's outer edge
 * @param faceMm width of the face along its slope, greater than 0
 * @param angleDeg angle of the face from the plane of the head, above 0 and below 90; within a degree of the seat's
 */
public record ValveFace(double headMm, double faceMm, double angleDeg) {
    public ValveFace {
        if (!(angleDeg > 0 && angleDeg < 90) || !(faceMm > 0) || !(innerMm(headMm, faceMm, angleDeg) > 0)) {
            throw new IllegalArgumentException(
                    "a valve's face is narrower than its head and its angle between 0 and 90 degrees," + " got head "
                            + headMm + " mm, face " + faceMm + " mm, angle " + angleDeg);
        }
    }

    /** Diameter of the face's inner edge. */
    public double innerMm() {
        return innerMm(headMm, faceMm, angleDeg);
    }

    /**
     * Where a seat lands on this face, along the slope.
     *
     * @param outerMm face left bare outside the seat; negative when the seat reaches past the head's edge
     * @param contactMm width in contact, 0 when they don't meet
     * @param innerMm face left bare inside the seat; negative when the seat reaches past the face's inner edge
     */
    public record Landing(double outerMm, double contactMm, double innerMm) {
        /** How far the contact's middle lies from the face's middle: positive towards the head's edge. */
        public double offMiddleMm() {
            return (Math.max(0, innerMm) - Math.max(0, outerMm)) / 2;
        }
    }

    /** Where a seat of these diameters lands on this face. */
    public Landing landing(SeatCuts seat) {
        double slope = 2 * Math.cos(Math.toRadians(angleDeg));
        double outer = (headMm - seat.outsideMm()) / slope;
        double inner = (seat.insideMm() - innerMm()) / slope;
        double contact = (Math.min(headMm, seat.outsideMm()) - Math.max(innerMm(), seat.insideMm())) / slope;
        return new Landing(outer, Math.max(0, contact), inner);
    }

    /**
     * By how much in mm a head must be wider to stand higher on the same seat: on a cone each mm up is 2 / tan(angle) across.
     *
     * @param higherMm how much higher, 0 or more
     * @param angleDeg angle of the seat from the plane of its rim
     */
    public static double widerMm(double higherMm, double angleDeg) {
        return 2 * higherMm / Math.tan(Math.toRadians(angleDeg));
    }

    private static double innerMm(double headMm, double faceMm, double angleDeg) {
        return headMm - 2 * faceMm * Math.cos(Math.toRadians(angleDeg));
    }
}
