package gudgeon.mechanics.chamber;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented crowns for the tests of this room, and an independent way to say what of them is metal. */
final class Examples {
    static final CrownForm DOME = new CrownForm.Dome(4, 46);
    static final CrownForm DISH = new CrownForm.Dish(2, 40);
    static final CrownForm FLAT = new CrownForm.Flat();

    private Examples() {}

    /** Two leaning pockets whose mouths overlap on a dome and reach beyond its base. */
    static Crown leaningPair() {
        return new Crown(DOME, 49.6, List.of(new Pocket(24, 3.2, 12.5, 180, 25), new Pocket(28, 3.2, 12, 0, 25)));
    }

    static Crown with(CrownForm form, Pocket... pockets) {
        return new Crown(form, 49.6, List.of(pockets));
    }

    static Crown random(long seed) {
        Random random = new Random(seed);
        CrownForm form = List.of(FLAT, DOME, DISH).get(random.nextInt(3));
        List<Pocket> pockets = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            pockets.add(new Pocket(
                    18 + 12 * random.nextDouble(),
                    -1 + 5 * random.nextDouble(),
                    16 * random.nextDouble(),
                    360 * random.nextDouble(),
                    -10 + 40 * random.nextDouble()));
        }
        return new Crown(form, 49.6, pockets);
    }

    /**
     * Removed volume in cm3 by counting points of a Halton sequence (Halton, Numerische Mathematik 2, 1960, 84-90) in a box around
     * the crown: written apart from the code under test, with the cylinder's test as a cross product.
     */
    static double removedByCountingCm3(Crown crown, int points) {
        double half = crown.landDiameterMm() / 2;
        double bottom = -12;
        double top = 5;
        long removed = 0;
        for (int i = 1; i <= points; i++) {
            double x = half * (2 * halton(i, 2) - 1);
            double y = half * (2 * halton(i, 3) - 1);
            double z = bottom + (top - bottom) * halton(i, 5);
            if (inBase(crown, x, y, z) && inAnyPocket(crown, x, y, z)) {
                removed++;
            }
        }
        return 4 * half * half * (top - bottom) * removed / points / 1000;
    }

    private static boolean inBase(Crown crown, double x, double y, double z) {
        double r2 = x * x + y * y;
        if (r2 > crown.landDiameterMm() * crown.landDiameterMm() / 4) {
            return false;
        }
        if (crown.form() instanceof CrownForm.Dome d) {
            double sphere = d.heightMm() / 2 + d.baseDiameterMm() * d.baseDiameterMm() / (8 * d.heightMm());
            double dz = z - d.heightMm() + sphere;
            return z <= 0 || r2 + dz * dz <= sphere * sphere;
        }
        if (crown.form() instanceof CrownForm.Dish d) {
            double sphere = d.depthMm() / 2 + d.rimDiameterMm() * d.rimDiameterMm() / (8 * d.depthMm());
            double dz = z + d.depthMm() - sphere;
            return z <= 0 && r2 + dz * dz >= sphere * sphere;
        }
        return z <= 0;
    }

    private static boolean inAnyPocket(Crown crown, double x, double y, double z) {
        for (Pocket p : crown.pockets()) {
            double azimuth = Math.toRadians(p.azimuthDeg());
            double tilt = Math.toRadians(p.tiltDeg());
            double ux = Math.sin(tilt) * Math.cos(azimuth);
            double uy = Math.sin(tilt) * Math.sin(azimuth);
            double uz = Math.cos(tilt);
            double px = x - p.offsetMm() * Math.cos(azimuth);
            double py = y - p.offsetMm() * Math.sin(azimuth);
            double cx = py * uz - z * uy;
            double cy = z * ux - px * uz;
            double cz = px * uy - py * ux;
            boolean aboveFloor = px * ux + py * uy + z * uz >= -p.depthMm();
            if (aboveFloor && 4 * (cx * cx + cy * cy + cz * cz) <= p.diameterMm() * p.diameterMm()) {
                return true;
            }
        }
        return false;
    }

    static double halton(int index, int base) {
        double fraction = 1;
        double value = 0;
        for (int i = index; i > 0; i /= base) {
            fraction /= base;
            value += fraction * (i % base);
        }
        return value;
    }
}
