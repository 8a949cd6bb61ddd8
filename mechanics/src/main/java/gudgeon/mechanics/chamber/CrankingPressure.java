package gudgeon.mechanics.chamber;

/**
 * What a compression gauge may show on a sound engine, as a range, in kPa above the air around.
 *
 * <p>Polytropic compression of the trapped charge, p (ratio^n - 1), with n from 1.2 (slow turning, cold metal) to 1.3 (quick
 * turning). That the exponent lies between these is common practice, found in general articles without an original source; so
 * is leaving leakage and the gauge's own volume out. A decompressor or a shut throttle lowers the reading below the range.
 *
 * @param lowKPa gauge pressure with the lower exponent
 * @param highKPa gauge pressure with the higher exponent
 */
public record CrankingPressure(double lowKPa, double highKPa) {
    /** Exponent for slow turning by hand or foot with cold metal. */
    public static final double LOW_EXPONENT = 1.2;

    /** Exponent for quick turning. */
    public static final double HIGH_EXPONENT = 1.3;

    /**
     * The range to expect.
     *
     * @param trappedRatio compression ratio from where the inlet valve shuts, 1 or more
     * @param altitudeM metres above sea level, -2000 to 11000
     * @throws IllegalArgumentException outside those ranges
     */
    public static CrankingPressure range(double trappedRatio, double altitudeM) {
        if (!(trappedRatio >= 1 && trappedRatio < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("trapped compression ratio must be 1 or more, got " + trappedRatio);
        }
        double air = StandardAtmosphere.pressureKPa(altitudeM);
        return new CrankingPressure(
                air * (Math.pow(trappedRatio, LOW_EXPONENT) - 1), air * (Math.pow(trappedRatio, HIGH_EXPONENT) - 1));
    }
}
