package gudgeon.mechanics.limits;

import java.util.OptionalDouble;

/**
 * A part in its seat as both grow with warmth: d(T) = d(20) (1 + a (T - 20)), sizes being those at 20 degrees Celsius (ISO 1).
 * Expansion is taken as even over the range, from -60 to 300 degrees.
 *
 * @param sizeMm nominal size, mm, above 0
 * @param part what the part is made of
 * @param around what is round it is made of
 */
public record WarmSeat(double sizeMm, Material part, Material around) {
    /** Temperature of reference of all sizes, degrees Celsius: ISO 1. */
    public static final double REFERENCE_CELSIUS = 20;

    public WarmSeat {
        if (!(sizeMm > 0 && Double.isFinite(sizeMm))) {
            throw new IllegalArgumentException("size must be above 0, got " + sizeMm + " mm");
        }
    }

    /**
     * Interference left when the two are as warm as given, mm of diameter; below zero it is clearance.
     *
     * @param interferenceMm interference at 20 degrees
     */
    public double interferenceMm(double interferenceMm, double partCelsius, double aroundCelsius) {
        return interferenceMm
                + sizeMm
                        * (part.expansionPerK() * (partCelsius - REFERENCE_CELSIUS)
                                - around.expansionPerK() * (aroundCelsius - REFERENCE_CELSIUS));
    }

    /**
     * How warm what is round the part must be for the part to drop in with a gap, degrees Celsius.
     *
     * @param interferenceMm interference at 20 degrees, mm of diameter
     * @param gapMm clearance wanted while it goes in, mm of diameter
     * @param partCelsius how warm or cold the part is
     */
    public double aroundCelsius(double interferenceMm, double gapMm, double partCelsius) {
        return REFERENCE_CELSIUS
                + (interferenceMm(interferenceMm, partCelsius, REFERENCE_CELSIUS) + gapMm)
                        / (sizeMm * around.expansionPerK());
    }

    /** How cold the part must be for it to drop in with a gap, degrees Celsius, when what is round it is as warm as given. */
    public double partCelsius(double interferenceMm, double gapMm, double aroundCelsius) {
        return REFERENCE_CELSIUS
                - (interferenceMm(interferenceMm, REFERENCE_CELSIUS, aroundCelsius) + gapMm)
                        / (sizeMm * part.expansionPerK());
    }

    /** The temperature of both at which the last interference goes, degrees Celsius; empty when warmth doesn't loosen it. */
    public OptionalDouble looseAtCelsius(double interferenceMm) {
        double difference = around.expansionPerK() - part.expansionPerK();
        return difference <= 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(REFERENCE_CELSIUS + interferenceMm / (sizeMm * difference));
    }
}
