package gudgeon.mechanics.chamber;

import gudgeon.mechanics.crank.Crank;

/**
 * The volumes that decide compression. Volumes in cm3, lengths in mm.
 *
 * <p>At top dead centre the gas has: the chamber, the hole in the pressed gasket, and the bore down to the crown's reference
 * plane, less what the crown stands into them. Bookkeeping: the volume between deck and reference plane is taken over the whole
 * bore, positive with the piston below the deck and negative with it proud; the side ring around the top land is counted apart.
 *
 * @param boreMm diameter of the bore, greater than 0
 * @param crank motion of the piston, with its protrusion
 * @param crown volumes of the crown
 * @param chamberCm3 chamber as measured by burette with both valves shut, plug fitted and a plate on the joint face, any recess
 *     of the head included; greater than 0
 * @param gasketMm thickness of the gasket as pressed, 0 or more
 * @param gasketBoreMm diameter of the hole in the gasket, greater than 0
 * @param sideRingCm3 volume around the top land down to the top ring, see {@link #sideRingCm3(double, double, double)}; 0 to leave
 *     it out, as most published ratios do
 */
public record Compression(
        double boreMm,
        Crank crank,
        CrownVolumes crown,
        double chamberCm3,
        double gasketMm,
        double gasketBoreMm,
        double sideRingCm3) {
    private static final double MM3_PER_CM3 = 1000;

    public Compression {
        if (!(boreMm > 0) || !(chamberCm3 > 0) || !(gasketMm >= 0) || !(gasketBoreMm > 0) || !(sideRingCm3 >= 0)) {
            throw new IllegalArgumentException(
                    "compression needs a bore, a chamber and a gasket bore above 0, and a gasket and side ring of 0 or more, got bore "
                            + boreMm + " mm, chamber " + chamberCm3 + " cm3, gasket " + gasketMm + " mm, gasket bore "
                            + gasketBoreMm + " mm, side ring " + sideRingCm3 + " cm3");
        }
    }

    /** The same with the side ring left out. */
    public Compression(
            double boreMm, Crank crank, CrownVolumes crown, double chamberCm3, double gasketMm, double gasketBoreMm) {
        this(boreMm, crank, crown, chamberCm3, gasketMm, gasketBoreMm, 0);
    }

    /**
     * Volume in cm3 of the ring between top land and bore, from the reference plane down to the top ring groove.
     *
     * @param boreMm diameter of the bore
     * @param landDiameterMm diameter at the top land, at most the bore
     * @param grooveBelowMm distance from the reference plane down to the groove's upper side
     */
    public static double sideRingCm3(double boreMm, double landDiameterMm, double grooveBelowMm) {
        return (areaMm2(boreMm) - areaMm2(landDiameterMm)) * grooveBelowMm / MM3_PER_CM3;
    }

    /** Swept volume in cm3: bore area times the true stroke, which with an offset pin is a little more than the crank's throw. */
    public double sweptCm3() {
        return areaMm2(boreMm) * strokeMm() / MM3_PER_CM3;
    }

    /** Volume in cm3 of the hole in the pressed gasket. */
    public double gasketCm3() {
        return areaMm2(gasketBoreMm) * gasketMm / MM3_PER_CM3;
    }

    /** Volume in cm3 of the bore between deck and reference plane at top dead centre; negative when the piston stands proud. */
    public double deckCm3() {
        return -areaMm2(boreMm) * crank.protrusionMm() / MM3_PER_CM3;
    }

    /**
     * Volume in cm3 that is left for the gas at top dead centre.
     *
     * @throws IllegalArgumentException when none is left: the sizes contradict each other
     */
    public double clearanceCm3() {
        double left = chamberCm3 + gasketCm3() + deckCm3() + sideRingCm3 - crown.displacedCm3();
        if (!(left > 0)) {
            throw new IllegalArgumentException("no volume is left above the piston at top dead centre: chamber "
                    + chamberCm3 + " cm3, gasket " + gasketCm3() + " cm3, deck " + deckCm3()
                    + " cm3, less the crown's " + crown.displacedCm3() + " cm3; look at chamber and protrusion");
        }
        return left;
    }

    /**
     * Static compression ratio: swept and clearance volume over clearance volume (Heywood, Internal Combustion Engine
     * Fundamentals, 1988, eq. 2.1).
     */
    public double staticRatio() {
        return 1 + sweptCm3() / clearanceCm3();
    }

    /**
     * Compression ratio from the moment the inlet valve shuts: volume then over clearance volume.
     *
     * @param inletShutsDeg crank angle at which the inlet valve is shut, in degrees, 0 firing top dead centre; about 540 to 660
     */
    public double trappedRatio(double inletShutsDeg) {
        double travel = crank.protrusionMm() - crank.crownHeightMm(inletShutsDeg);
        return 1 + areaMm2(boreMm) * travel / MM3_PER_CM3 / clearanceCm3();
    }

    /** Distance in mm between the dead centres, where rod and throw stand in one line: stretched, and folded. */
    private double strokeMm() {
        double stretched = crank.rodMm() + crank.radiusMm();
        double folded = crank.rodMm() - crank.radiusMm();
        double offset = crank.pinOffsetMm() * crank.pinOffsetMm();
        return Math.sqrt(stretched * stretched - offset) - Math.sqrt(folded * folded - offset);
    }

    private static double areaMm2(double diameterMm) {
        return Math.PI * diameterMm * diameterMm / 4;
    }
}
