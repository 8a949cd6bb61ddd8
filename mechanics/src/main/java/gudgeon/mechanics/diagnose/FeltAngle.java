package gudgeon.mechanics.diagnose;

/**
 * A crank angle at which something was felt.
 *
 * @param forward whether the crank was turned forward; else backward
 * @param angleDeg the angle in degrees, 0 or more and below the period
 * @param doubtDeg its standard uncertainty in degrees, above 0
 * @param periodDeg 720 where it is known which turn of a cycle it was, 360 where it is not
 */
public record FeltAngle(boolean forward, double angleDeg, double doubtDeg, double periodDeg) {
    /** One turn of the crank, in degrees. */
    public static final double TURN_DEG = 360;

    /** A cycle of a four-stroke engine, in degrees of the crank. */
    public static final double CYCLE_DEG = 720;

    public FeltAngle {
        if (periodDeg != TURN_DEG && periodDeg != CYCLE_DEG) {
            throw new IllegalArgumentException("the period is 360 or 720 degrees, got " + periodDeg);
        }
        if (!(angleDeg >= 0 && angleDeg < periodDeg && doubtDeg > 0 && doubtDeg < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("an angle from 0 up to " + periodDeg
                    + " degrees with a doubt above 0 is needed, got " + angleDeg + " and " + doubtDeg);
        }
    }

    /** The angle brought into its period. */
    public static FeltAngle of(boolean forward, double angleDeg, double doubtDeg, boolean strokeKnown) {
        double period = strokeKnown ? CYCLE_DEG : TURN_DEG;
        double within = angleDeg % period;
        return new FeltAngle(forward, within < 0 ? (within + period) % period : within, doubtDeg, period);
    }
}
