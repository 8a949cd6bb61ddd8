package gudgeon.mechanics.chamber;

/** The crown's form on its reference plane, before any pocket is cut. Lengths in mm. */
public sealed interface CrownForm {
    /** Height in mm of the surface above the reference plane, at a distance in mm from the bore axis; negative in a dish. */
    double surfaceMm(double radiusMm);

    /** A crown flat on its reference plane. */
    record Flat() implements CrownForm {
        @Override
        public double surfaceMm(double radiusMm) {
            return 0;
        }
    }

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

        /** Radius in mm of the sphere that the cap belongs to: (b^2 + h^2) / 2h, by Pythagoras at the rim. */
        public double sphereRadiusMm() {
            return CrownForm.sphereRadius(heightMm, baseDiameterMm / 2);
        }

        /** Height in mm of the sphere's centre above the reference plane; 0 or less. */
        public double sphereCentreMm() {
            return heightMm - sphereRadiusMm();
        }

        @Override
        public double surfaceMm(double radiusMm) {
            if (radiusMm >= baseDiameterMm / 2) {
                return 0;
            }
            double sphere = sphereRadiusMm();
            return sphereCentreMm() + Math.sqrt(sphere * sphere - radiusMm * radiusMm);
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

        /** Radius in mm of the sphere that the cap belongs to: (b^2 + h^2) / 2h, by Pythagoras at the rim. */
        public double sphereRadiusMm() {
            return CrownForm.sphereRadius(depthMm, rimDiameterMm / 2);
        }

        /** Height in mm of the sphere's centre above the reference plane; 0 or more. */
        public double sphereCentreMm() {
            return sphereRadiusMm() - depthMm;
        }

        @Override
        public double surfaceMm(double radiusMm) {
            if (radiusMm >= rimDiameterMm / 2) {
                return 0;
            }
            double sphere = sphereRadiusMm();
            return sphereCentreMm() - Math.sqrt(sphere * sphere - radiusMm * radiusMm);
        }
    }

    private static double sphereRadius(double height, double base) {
        return (base * base + height * height) / (2 * height);
    }

    private static void requireCap(String what, double heightMm, double diameterMm) {
        if (!(heightMm > 0) || !(diameterMm > 0) || !(heightMm <= diameterMm / 2)) {
            throw new IllegalArgumentException(what + " " + heightMm
                    + " mm must be above 0 and at most half of its circle's diameter " + diameterMm + " mm");
        }
    }
}
