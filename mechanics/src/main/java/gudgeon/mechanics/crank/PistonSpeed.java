package gudgeon.mechanics.crank;

/** Mean piston speed: twice the stroke for every turn of the crank (Heywood, Internal Combustion Engine Fundamentals, eq. 2.9). */
public final class PistonSpeed {
    private static final double MM_PER_M = 1000;
    private static final double SECONDS_PER_MINUTE = 60;

    private PistonSpeed() {}

    /**
     * Mean piston speed in m/s.
     *
     * @param strokeMm stroke in mm, above 0
     * @param rpm turns of the crank a minute, from 0
     * @throws IllegalArgumentException outside those
     */
    public static double meanMPerS(double strokeMm, double rpm) {
        return 2 * stroke(strokeMm) * from0(rpm, "turns a minute") / SECONDS_PER_MINUTE / MM_PER_M;
    }

    /**
     * Turns of the crank a minute at which the piston has a mean speed.
     *
     * @param strokeMm stroke in mm, above 0
     * @param mPerS mean piston speed in m/s, from 0
     * @throws IllegalArgumentException outside those
     */
    public static double rpm(double strokeMm, double mPerS) {
        return from0(mPerS, "a mean piston speed") * SECONDS_PER_MINUTE * MM_PER_M / (2 * stroke(strokeMm));
    }

    private static double stroke(double mm) {
        if (!(mm > 0) || !Double.isFinite(mm)) {
            throw new IllegalArgumentException("a stroke is above 0 mm, got " + mm);
        }
        return mm;
    }

    private static double from0(double value, String what) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is from 0, got " + value);
        }
        return value;
    }
}
