package gudgeon.mechanics.chamber;

/**
 * Volumes of a crown in cm3, as they stand in the actual crown: what lies beyond the top land or above the crown's surface counts
 * for nothing, and where pockets overlap the space is counted once.
 *
 * @param domeCm3 volume of the dome above the reference plane before pockets are cut, 0 without a dome
 * @param dishCm3 volume of the dish below the reference plane, 0 without a dish
 * @param pocketsCm3 metal that all pockets together removed from dome, flat and dish; accurate to 0.001 cm3, and mostly
 *     to 0.00005
 */
public record CrownVolumes(double domeCm3, double dishCm3, double pocketsCm3) {
    private static final double MM3_PER_CM3 = 1000;

    /** The volumes of a crown. */
    public static CrownVolumes of(Crown crown) {
        double land = crown.landDiameterMm() / 2;
        double dome = 0;
        double dish = 0;
        if (crown.form() instanceof CrownForm.Dome d) {
            dome = capWithin(land, d.heightMm(), d.baseDiameterMm() / 2);
        } else if (crown.form() instanceof CrownForm.Dish d) {
            dish = capWithin(land, d.depthMm(), d.rimDiameterMm() / 2);
        }
        return new CrownVolumes(
                dome / MM3_PER_CM3, dish / MM3_PER_CM3, new PocketVolume(crown).removedMm3() / MM3_PER_CM3);
    }

    /** What the crown takes from the combustion space, in cm3: the dome less the dish and the pockets; negative for a dished crown. */
    public double displacedCm3() {
        return domeCm3 - dishCm3 - pocketsCm3;
    }

    /**
     * Volume of a spherical cap inside an upright cylinder on its axis: the whole cap, pi h (3 b^2 + h^2) / 6, when the cylinder
     * is the wider. Otherwise the shell integral of 2 pi r times the height of the surface.
     */
    private static double capWithin(double land, double height, double base) {
        if (base <= land) {
            return Math.PI * height * (3 * base * base + height * height) / 6;
        }
        double sphere = (base * base + height * height) / (2 * height);
        double centre = height - sphere;
        double under = Math.pow(sphere, 3) - Math.pow(sphere * sphere - land * land, 1.5);
        return Math.PI * (centre * land * land + 2 * under / 3);
    }
}
