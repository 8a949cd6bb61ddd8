package gudgeon.benchmarks.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;

/**
 * The same problem the way a numerical script does it: every half degree of the cycle, 360 by 12 points on each valve's face,
 * the height of the crown under each. It finds the bore gap alone, to no better than its points are apart.
 */
final class DenseScript {
    private static final double STEP_DEG = 0.5;
    private static final int SPOKES = 360;
    private static final int RINGS = 12;

    private DenseScript() {}

    static double leastBoreGap(TopEnd topEnd, Valve valve) {
        double a = Math.toRadians(valve.azimuthDeg());
        double t = Math.toRadians(valve.tiltDeg());
        Heights heights = new Heights(topEnd.crown());
        double least = Double.POSITIVE_INFINITY;
        double[] px = new double[SPOKES * RINGS];
        double[] py = new double[SPOKES * RINGS];
        double[] pz = new double[SPOKES * RINGS];
        for (int i = 0; i < SPOKES; i++) {
            for (int j = 0; j < RINGS; j++) {
                double r = valve.headDiameterMm() / 2 * (j + 1) / RINGS;
                double p = r * Math.cos(2 * Math.PI * i / SPOKES);
                double q = r * Math.sin(2 * Math.PI * i / SPOKES);
                px[i * RINGS + j] = p * Math.cos(t) * Math.cos(a) - q * Math.sin(a);
                py[i * RINGS + j] = p * Math.cos(t) * Math.sin(a) + q * Math.cos(a);
                pz[i * RINGS + j] = -p * Math.sin(t);
            }
        }
        for (double theta = 0; theta < 720; theta += STEP_DEG) {
            double lift = valve.lift().mmAt(theta);
            double cx = (valve.offsetMm() - lift * Math.sin(t)) * Math.cos(a);
            double cy = (valve.offsetMm() - lift * Math.sin(t)) * Math.sin(a);
            double cz = topEnd.gasketMm()
                    + valve.recessMm()
                    - lift * Math.cos(t)
                    - topEnd.crank().crownHeightMm(theta);
            for (int i = 0; i < px.length; i++) {
                double gap = cz + pz[i] - heights.at(cx + px[i], cy + py[i]);
                least = Math.min(least, gap);
            }
        }
        return least;
    }

    /** A crown with everything worked out beforehand that does not depend on the point. */
    private static final class Heights {
        private final double baseSquared;
        private final double sphere;
        private final double centre;
        private final double[][] pockets;

        Heights(Crown crown) {
            if (crown.form() instanceof CrownForm.Dome dome) {
                double b = dome.baseDiameterMm() / 2;
                baseSquared = b * b;
                sphere = (b * b + dome.heightMm() * dome.heightMm()) / (2 * dome.heightMm());
                centre = dome.heightMm() - sphere;
            } else {
                throw new IllegalArgumentException("the script knows domed crowns only");
            }
            pockets = new double[crown.pockets().size()][];
            for (int i = 0; i < pockets.length; i++) {
                Pocket p = crown.pockets().get(i);
                double a = Math.toRadians(p.azimuthDeg());
                double t = Math.toRadians(p.tiltDeg());
                pockets[i] = new double[] {
                    Math.cos(a),
                    Math.sin(a),
                    Math.cos(t),
                    Math.sin(t),
                    p.offsetMm(),
                    p.depthMm(),
                    p.diameterMm() * p.diameterMm() / 4
                };
            }
        }

        double at(double x, double y) {
            double r2 = x * x + y * y;
            double height = r2 < baseSquared ? centre + Math.sqrt(sphere * sphere - r2) : 0;
            for (double[] p : pockets) {
                double out = x * p[0] + y * p[1] - p[4];
                double side = y * p[0] - x * p[1];
                double floor = (-p[5] - out * p[3]) / p[2];
                double across = out * p[2] - floor * p[3];
                if (floor < height && across * across + side * side < p[6]) {
                    height = floor;
                }
            }
            return height;
        }
    }
}
