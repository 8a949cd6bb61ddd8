package gudgeon.mechanics.limits;

/**
 * A part pressed or shrunk into what is round it, both taken as rings of the same length: Lame's thick cylinders under no end load.
 * Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 3-16, eq. 3-56, with diameters for radii.
 *
 * <p>Elastic: a stress beyond the material's yield means that the figures no longer hold. A real casting's boss is not a ring of
 * even thickness; its outside diameter here is the least there is round the hole.
 *
 * @param sizeMm diameter at which they touch, mm, above 0
 * @param interferenceMm by how much the part is larger than its hole before, mm of diameter; 0 or more
 * @param partBoreMm hole through the part, mm; 0 for a solid one, below the size
 * @param outsideMm outside diameter of what is round it, mm, above the size
 * @param part what the part is made of
 * @param around what is round it is made of
 */
public record Interference(
        double sizeMm, double interferenceMm, double partBoreMm, double outsideMm, Material part, Material around) {
    /**
     * @throws IllegalArgumentException when the diameters don't go from within outwards, or the interference is below 0 or a tenth of
     *     the size or more, where this theory doesn't hold
     */
    public Interference {
        if (!(partBoreMm >= 0 && partBoreMm < sizeMm && sizeMm < outsideMm && Double.isFinite(outsideMm))) {
            throw new IllegalArgumentException("diameters must grow from the part's bore (" + partBoreMm
                    + " mm) over the size (" + sizeMm + " mm) to the outside (" + outsideMm + " mm)");
        }
        if (!(interferenceMm >= 0 && interferenceMm < sizeMm / 10)) {
            throw new IllegalArgumentException(
                    "interference must be 0 to a tenth of the size, got " + interferenceMm + " mm");
        }
    }

    /** Pressure where they touch, MPa. */
    public double pressureMPa() {
        double give = (ratio(sizeMm, outsideMm) + around.poisson()) / around.elasticityMPa()
                + (ratio(partBoreMm, sizeMm) - part.poisson()) / part.elasticityMPa();
        return interferenceMm / (sizeMm * give);
    }

    /** Largest hoop stress round the hole, at its wall, MPa, pulling. */
    public double hoopAroundMPa() {
        return pressureMPa() * ratio(sizeMm, outsideMm);
    }

    /** Largest hoop stress in the part, MPa, below zero because it is squeezed: at its own bore, or everywhere in a solid one. */
    public double hoopPartMPa() {
        return partBoreMm == 0
                ? -pressureMPa()
                : -2 * pressureMPa() * sizeMm * sizeMm / (sizeMm * sizeMm - partBoreMm * partBoreMm);
    }

    /** By how much the part's own bore closes in, mm of diameter; 0 for a solid part. */
    public double boreClosesMm() {
        return -hoopPartMPa() / part.elasticityMPa() * partBoreMm;
    }

    /**
     * Force at the end of pressing it in, N.
     *
     * @param lengthMm length over which they touch, mm, above 0
     * @param friction coefficient of friction, 0 to 1
     * @throws IllegalArgumentException outside that
     */
    public double pressForceN(double lengthMm, double friction) {
        if (!(lengthMm > 0 && Double.isFinite(lengthMm) && friction >= 0 && friction <= 1)) {
            throw new IllegalArgumentException(
                    "length must be above 0 and friction 0 to 1, got " + lengthMm + " mm and " + friction);
        }
        return friction * pressureMPa() * Math.PI * sizeMm * lengthMm;
    }

    /** (D2 + d2) / (D2 - d2) of a ring. */
    private static double ratio(double insideMm, double outsideMm) {
        return (outsideMm * outsideMm + insideMm * insideMm) / (outsideMm * outsideMm - insideMm * insideMm);
    }
}
