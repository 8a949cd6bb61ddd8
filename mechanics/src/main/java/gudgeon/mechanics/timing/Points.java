package gudgeon.mechanics.timing;

/**
 * Contact breaker points and the cam with one lobe that opens them, one spark for each turn of the cam.
 *
 * @param crankTurns turns of the crank for one of the cam: 1 on the flywheel, 2 on the camshaft
 */
public record Points(int crankTurns) {
    private static final double TURN_DEG = 360;
    private static final double WHOLE_PERCENT = 100;

    public Points {
        if (crankTurns != 1 && crankTurns != 2) {
            throw new IllegalArgumentException("the crank turns once or twice for a points cam, got " + crankTurns);
        }
    }

    /** Dwell in degrees of the points cam for a dwell in per cent of its turn: the part for which the points are closed. */
    public double dwellDeg(double percent) {
        return percent / WHOLE_PERCENT * TURN_DEG;
    }

    /** Dwell in per cent of a turn for a dwell in degrees of the points cam. */
    public double dwellPercent(double dwellDeg) {
        return dwellDeg / TURN_DEG * WHOLE_PERCENT;
    }

    /**
     * Crank degrees by which the points open later with one dwell than with another, backplate left alone: a lobe with flanks
     * alike opens later by half of what it stays closed longer (symmetry of the lobe).
     *
     * @param dwellDeg the dwell in degrees of the points cam
     * @param fromDwellDeg the dwell that it is held against
     */
    public double opensLaterDeg(double dwellDeg, double fromDwellDeg) {
        return crankTurns * (dwellDeg - fromDwellDeg) / 2;
    }

    /** Degrees by which a plate that carries the points is turned to move their opening by some crank degrees. */
    public double plateDeg(double crankDeg) {
        return crankDeg / crankTurns;
    }
}
