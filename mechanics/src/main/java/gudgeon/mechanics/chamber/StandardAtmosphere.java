package gudgeon.mechanics.chamber;

/** Air pressure of the standard atmosphere, ISO 2533:1975, which up to 11 km is that of the U.S. Standard Atmosphere 1976. */
public final class StandardAtmosphere {
    /** Pressure at sea level, kPa. */
    public static final double SEA_LEVEL_KPA = 101.325;

    private static final double SEA_LEVEL_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    /** g / (R x lapse rate), with g = 9.80665 m/s2 and R = 287.05287 J/(kg K). */
    private static final double EXPONENT = 9.80665 / (287.05287 * LAPSE_K_PER_M);

    private StandardAtmosphere() {}

    /**
     * Air pressure in kPa at an altitude: p0 (1 - 0.0065 h / 288.15)^5.2559.
     *
     * @param altitudeM metres above sea level, -2000 to 11000, taken as geopotential; below 5000 m a surveyed height differs from
     *     that so little that the pressure moves by less than 0.06 %
     * @throws IllegalArgumentException outside that range
     */
    public static double pressureKPa(double altitudeM) {
        if (!(altitudeM >= -2000 && altitudeM <= 11000)) {
            throw new IllegalArgumentException("altitude must be -2000 to 11000 m above sea level, got " + altitudeM);
        }
        return SEA_LEVEL_KPA * Math.pow(1 - LAPSE_K_PER_M * altitudeM / SEA_LEVEL_K, EXPONENT);
    }
}
