package gudgeon.mechanics.chamber;

/** The crown's form on its reference plane, before any pocket is cut. Lengths in mm. */
public sealed interface CrownForm {
    /** A crown flat on its reference plane. */
    record Flat() implements CrownForm {}

    /**
     * A spherical cap standing on the reference plane, centred on the bore axis.
     *
     * @param heightMm height of the cap, greater than 0 and not more than half the base diameter
     * @param baseDiameterMm diameter of the circle it stands on, greater than 0
     */
    record Dome(double heightMm, double baseDiameterMm) implements CrownForm {
        public Dome {
            CrownForm.requireCap("dome height", heightMm, baseDiameterMm);
        }
    }

    /**
     * A spherical cap sunk into the reference plane, centred on the bore axis.
     *
     * @param depthMm depth of the cap, greater than 0 and not more than half the rim diameter
     * @param rimDiameterMm diameter of its rim, greater than 0
     */
    record Dish(double depthMm, double rimDiameterMm) implements CrownForm {
        public Dish {
            CrownForm.requireCap("dish depth", depthMm, rimDiameterMm);
        }
    }

    private static void requireCap(String what, double heightMm, double diameterMm) {
        if (!(heightMm > 0) || !(diameterMm > 0) || !(heightMm <= diameterMm / 2)) {
            throw new IllegalArgumentException(what + " " + heightMm
                    + " mm must be above 0 and at most half of its circle's diameter " + diameterMm + " mm");
        }
    }
}
