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
                double gap = cz + pz[i] - crownHeight(topEnd.crown(), cx + px[i], cy + py[i]);
                least = Math.min(least, gap);
            }
        }
        return least;
    }

    private static double crownHeight(Crown crown, double x, double y) {
        double r2 = x * x + y * y;
        double height = 0;
        if (crown.form() instanceof CrownForm.Dome dome) {
            double b = dome.baseDiameterMm() / 2;
            double rs = (b * b + dome.heightMm() * dome.heightMm()) / (2 * dome.heightMm());
            height = r2 < b * b ? dome.heightMm() - rs + Math.sqrt(rs * rs - r2) : 0;
        }
        for (Pocket p : crown.pockets()) {
            double a = Math.toRadians(p.azimuthDeg());
            double t = Math.toRadians(p.tiltDeg());
            double out = x * Math.cos(a) + y * Math.sin(a) - p.offsetMm();
            double side = -x * Math.sin(a) + y * Math.cos(a);
            double floor = (-p.depthMm() - out * Math.sin(t)) / Math.cos(t);
            double across = out * Math.cos(t) - floor * Math.sin(t);
            if (floor < height && across * across + side * side < p.diameterMm() * p.diameterMm() / 4) {
                height = floor;
            }
        }
        return height;
    }
}
