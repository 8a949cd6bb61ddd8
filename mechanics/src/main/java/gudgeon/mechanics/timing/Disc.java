package gudgeon.mechanics.timing;

/** Angles as a degree disc on the crank shows them, which begins anew every turn. */
public final class Disc {
    private static final double TURN_DEG = 360;

    private Disc() {}

    /** An angle in degrees as the disc shows it, in [0, 360). */
    public static double reading(double deg) {
        double within = deg % TURN_DEG;
        // a tiny negative angle and a whole turn are the same double
        double turned = within < 0 ? within + TURN_DEG : within;
        return turned == TURN_DEG ? 0 : turned;
    }

    /** The shortest way from one reading to another in degrees, in [-180, 180); positive where the reading rises. */
    public static double shortest(double fromDeg, double toDeg) {
        return reading(toDeg - fromDeg + TURN_DEG / 2) - TURN_DEG / 2;
    }

    /** That of the angles {@code deg + k * 360} in degrees which lies nearest to another angle; the lower of two as near. */
    public static double nearest(double deg, double aboutDeg) {
        return aboutDeg + shortest(aboutDeg, deg);
    }
}
