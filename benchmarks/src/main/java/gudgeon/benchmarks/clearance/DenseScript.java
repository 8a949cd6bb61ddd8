package gudgeon.benchmarks.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.clearance.TopEnd;
import gudgeon.mechanics.clearance.Valve;

/**
 * The same problem the way a numerical script does it: every half degree of the cycle, 360 by 12 points on each valve's face,
 * and for each point plain formulas against the crown's faces. It is no better than its points are apart, and knows no edges.
 */
final class DenseScript {
    private static final double STEP_DEG = 0.5;
    private static final int SPOKES = 360;
    private static final int RINGS = 12;

    private DenseScript() {}

    /**
     * All gaps of all valves: bore, valve, nearest, side and wall gap of each point of a face, the deck gap, and the heads against
     * each other from rim point to rim point. In the order of bore, valve, nearest, side, wall, deck, valve to valve.
     */
    static double[] leastGaps(TopEnd topEnd) {
        double[] least = new double[7];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        Heights heights = new Heights(topEnd.crown());
        Face[] faces = topEnd.valves().stream().map(Face::new).toArray(Face[]::new);
        for (double theta = 0; theta < 720; theta += STEP_DEG) {
            double plane = topEnd.crank().crownHeightMm(theta);
            least[5] = Math.min(least[5], topEnd.gasketMm() - plane);
            for (Face face : faces) {
                face.place(theta, topEnd.gasketMm());
                for (int i = 0; i < face.px.length; i++) {
                    double x = face.cx + face.px[i];
                    double y = face.cy + face.py[i];
                    double z = face.cz + face.pz[i];
                    heights.gaps(least, x, y, z - plane, face);
                    if (z < 0) {
                        double wall = topEnd.boreDiameterMm() / 2 - Math.sqrt(x * x + y * y);
                        least[4] = Math.min(least[4], wall);
                    }
                }
            }
            for (int a = 0; a < faces.length; a++) {
                for (int b = a + 1; b < faces.length; b++) {
                    least[6] = Math.min(least[6], faces[a].toRim(faces[b]));
                }
            }
        }
        return least;
    }

    /** A valve's face as points around its centre. */
    private static final class Face {
        private final Valve valve;
        final double[] px = new double[SPOKES * RINGS];
        final double[] py = new double[SPOKES * RINGS];
        final double[] pz = new double[SPOKES * RINGS];
        final double ux;
        final double uy;
        final double uz;
        private final double outX;
        private final double outY;
        double cx;
        double cy;
        double cz;

        Face(Valve valve) {
            this.valve = valve;
            double a = Math.toRadians(valve.azimuthDeg());
            double t = Math.toRadians(valve.tiltDeg());
            outX = Math.cos(a);
            outY = Math.sin(a);
            ux = Math.sin(t) * outX;
            uy = Math.sin(t) * outY;
            uz = Math.cos(t);
            for (int i = 0; i < SPOKES; i++) {
                for (int j = 0; j < RINGS; j++) {
                    double r = valve.headDiameterMm() / 2 * (j + 1) / RINGS;
                    double p = r * Math.cos(2 * Math.PI * i / SPOKES);
                    double q = r * Math.sin(2 * Math.PI * i / SPOKES);
                    px[i * RINGS + j] = p * uz * outX - q * outY;
                    py[i * RINGS + j] = p * uz * outY + q * outX;
                    pz[i * RINGS + j] = -p * Math.sin(t);
                }
            }
        }

        void place(double theta, double gasketMm) {
            double lift = valve.lift().mmAt(theta);
            cx = valve.offsetMm() * outX - lift * ux;
            cy = valve.offsetMm() * outY - lift * uy;
            cz = gasketMm + valve.recessMm() - lift * uz;
        }

        /** Every fourth point of one rim against every fourth of the other. */
        double toRim(Face other) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = RINGS - 1; i < px.length; i += 4 * RINGS) {
                for (int j = RINGS - 1; j < px.length; j += 4 * RINGS) {
                    double x = cx + px[i] - other.cx - other.px[j];
                    double y = cy + py[i] - other.cy - other.py[j];
                    double z = cz + pz[i] - other.cz - other.pz[j];
                    least = Math.min(least, x * x + y * y + z * z);
                }
            }
            return Math.sqrt(least);
        }
    }

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

        /** Bore, valve, nearest and side gap of one point, against every face in turn. */
        void gaps(double[] least, double x, double y, double z, Face face) {
            double height = at(x, y);
            least[0] = Math.min(least[0], z - height);
            double r2 = x * x + y * y;
            boolean inPocket = false;
            for (double[] p : pockets) {
                double out = x * p[0] + y * p[1] - p[4];
                double side = y * p[0] - x * p[1];
                double along = out * p[3] + z * p[2] + p[5];
                double across = out * p[2] - z * p[3];
                double off = across * across + side * side;
                if (off < p[6]) {
                    inPocket = true;
                    double rate = face.ux * p[3] * p[0] + face.uy * p[3] * p[1] + face.uz * p[2];
                    least[1] = Math.min(least[1], along / rate);
                    least[2] = Math.min(least[2], along);
                    if (z < height - z) {
                        double wall = Math.sqrt(p[6]) - Math.sqrt(off);
                        least[2] = Math.min(least[2], wall);
                        least[3] = Math.min(least[3], wall);
                    }
                }
            }
            if (!inPocket) {
                if (r2 < baseSquared) {
                    double up = z - centre;
                    double b = x * face.ux + y * face.uy + up * face.uz;
                    double c = r2 + up * up - sphere * sphere;
                    if (b * b > c) {
                        least[1] = Math.min(least[1], b - Math.sqrt(b * b - c));
                    }
                    least[2] = Math.min(least[2], Math.sqrt(r2 + up * up) - sphere);
                } else {
                    least[1] = Math.min(least[1], z / face.uz);
                    least[2] = Math.min(least[2], z);
                }
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
