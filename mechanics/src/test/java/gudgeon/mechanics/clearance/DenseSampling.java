package gudgeon.mechanics.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;

/**
 * A second opinion on the gaps that shares no code with the sweep: the crown as a yes-or-no question about a point, the valve's
 * head as many points. Slow and plain on purpose.
 */
final class DenseSampling {
    private final TopEnd topEnd;

    DenseSampling(TopEnd topEnd) {
        this.topEnd = topEnd;
    }

    static boolean metal(Crown crown, double x, double y, double z) {
        double r = Math.hypot(x, y);
        if (r > crown.landDiameterMm() / 2) {
            return false;
        }
        double top = 0;
        if (crown.form() instanceof CrownForm.Dome dome) {
            double b = dome.baseDiameterMm() / 2;
            double rs = (b * b + dome.heightMm() * dome.heightMm()) / (2 * dome.heightMm());
            top = r < b ? dome.heightMm() - rs + Math.sqrt(rs * rs - r * r) : 0;
        } else if (crown.form() instanceof CrownForm.Dish dish) {
            double b = dish.rimDiameterMm() / 2;
            double rs = (b * b + dish.depthMm() * dish.depthMm()) / (2 * dish.depthMm());
            top = r < b ? rs - dish.depthMm() - Math.sqrt(rs * rs - r * r) : 0;
        }
        if (z > top) {
            return false;
        }
        for (Pocket p : crown.pockets()) {
            double a = Math.toRadians(p.azimuthDeg());
            double t = Math.toRadians(p.tiltDeg());
            double[] u = {Math.sin(t) * Math.cos(a), Math.sin(t) * Math.sin(a), Math.cos(t)};
            double[] q = {x - p.offsetMm() * Math.cos(a), y - p.offsetMm() * Math.sin(a), z};
            double along = q[0] * u[0] + q[1] * u[1] + q[2] * u[2];
            double r2 = q[0] * q[0] + q[1] * q[1] + q[2] * q[2] - along * along;
            if (along > -p.depthMm() && r2 < p.diameterMm() * p.diameterMm() / 4) {
                return false;
            }
        }
        return true;
    }

    /** Points of the head at a crank angle: face, edge and back, in the crown's frame. */
    double[][] head(int v, double theta, int rings, int spokes) {
        Valve valve = topEnd.valves().get(v);
        double a = Math.toRadians(valve.azimuthDeg());
        double t = Math.toRadians(valve.tiltDeg());
        double[] u = {Math.sin(t) * Math.cos(a), Math.sin(t) * Math.sin(a), Math.cos(t)};
        double[] e = {Math.cos(t) * Math.cos(a), Math.cos(t) * Math.sin(a), -Math.sin(t)};
        double[] f = {-Math.sin(a), Math.cos(a), 0};
        double lift = valve.lift().mmAt(theta);
        double[] c = {
            valve.offsetMm() * Math.cos(a) - lift * u[0],
            valve.offsetMm() * Math.sin(a) - lift * u[1],
            topEnd.gasketMm() + valve.recessMm() - lift * u[2] - topEnd.crank().crownHeightMm(theta)
        };
        double[][] points = new double[(rings + 5) * spokes][3];
        int n = 0;
        for (int ring = 1; ring <= rings + 5; ring++) {
            double r = valve.headDiameterMm() / 2 * Math.min(1, ring / (double) rings);
            double up = ring <= rings ? 0 : valve.marginMm() * (ring - rings) / 5.0;
            for (int s = 0; s < spokes; s++) {
                double phi = 2 * Math.PI * s / spokes;
                for (int k = 0; k < 3; k++) {
                    points[n][k] = c[k] + r * Math.cos(phi) * e[k] + r * Math.sin(phi) * f[k] + up * u[k];
                }
                n++;
            }
        }
        return points;
    }

    /** Least distance that the crown can rise before one of the head's points is in metal; bisected, for heads clear of it. */
    double boreGap(int v, double theta, int rings, int spokes) {
        return moveUntilMetal(head(v, theta, rings, spokes), new double[] {0, 0, -1});
    }

    double valveGap(int v, double theta, int rings, int spokes) {
        Valve valve = topEnd.valves().get(v);
        double a = Math.toRadians(valve.azimuthDeg());
        double t = Math.toRadians(valve.tiltDeg());
        return moveUntilMetal(
                head(v, theta, rings, spokes),
                new double[] {-Math.sin(t) * Math.cos(a), -Math.sin(t) * Math.sin(a), -Math.cos(t)});
    }

    private double moveUntilMetal(double[][] points, double[] way) {
        double least = 60;
        for (double[] p : points) {
            double step = 0.05;
            double d = 0;
            while (d < least && !metal(topEnd.crown(), p[0] + d * way[0], p[1] + d * way[1], p[2] + d * way[2])) {
                d += step;
            }
            if (d < least) {
                double low = Math.max(0, d - step);
                double high = d;
                while (high - low > 1e-6) {
                    double m = (low + high) / 2;
                    if (metal(topEnd.crown(), p[0] + m * way[0], p[1] + m * way[1], p[2] + m * way[2])) {
                        high = m;
                    } else {
                        low = m;
                    }
                }
                least = Math.min(least, high);
            }
        }
        return least;
    }

    boolean overlaps(int v, double theta, int rings, int spokes) {
        for (double[] p : head(v, theta, rings, spokes)) {
            if (metal(topEnd.crown(), p[0], p[1], p[2])) {
                return true;
            }
        }
        return false;
    }
}
