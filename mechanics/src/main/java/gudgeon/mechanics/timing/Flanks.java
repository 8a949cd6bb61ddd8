package gudgeon.mechanics.timing;

/**
 * The crank angles at which a valve passes a lift, opening and closing. Angles in degrees from firing top dead centre.
 *
 * @param opensDeg where it reaches the lift
 * @param closesDeg where it is back there, less than a turn and a half of the crank later
 */
public record Flanks(double opensDeg, double closesDeg) {
    /** No valve of a four-stroke is open for longer; generous on purpose. */
    private static final double LONGEST_DEG = 540;

    public Flanks {
        if (!(closesDeg > opensDeg && closesDeg - opensDeg < LONGEST_DEG)) {
            throw new IllegalArgumentException("a valve closes after it opens, within " + LONGEST_DEG + " degrees, got "
                    + opensDeg + " and " + closesDeg);
        }
    }

    /** Degrees of the crank for which the valve stands above the lift. */
    public double durationDeg() {
        return closesDeg - opensDeg;
    }

    /** The crank angle half way between, in degrees: the lobe's centre where its flanks are alike. */
    public double centreDeg() {
        return (opensDeg + closesDeg) / 2;
    }

    /** How many crank degrees later than others these lie, the mean of both flanks. */
    public double laterDeg(Flanks other) {
        return centreDeg() - other.centreDeg();
    }
}
