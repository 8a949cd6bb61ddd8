package gudgeon.mechanics.clearance;

/**
 * The edges of a crown that can meet a valve: the land's edge, a dish's rim, the lips of the pockets, the ridges where pockets
 * meet, and the lines where a pocket's floor breaks out of the crown. Each is a closed or open curve over a parameter from 0 to
 * 1, in the crown's frame. Points are sampled once per crown; between samples they are computed anew.
 */
final class CrownEdges {
    /** Samples on each curve; the search refines between them. */
    static final int SAMPLES = HeadSolid.SAMPLES;

    private static final int LAND = 0;
    private static final int DISH_RIM = 1;
    private static final int LIP = 2;
    private static final int RIDGE_ENTERED = 3;
    private static final int RIDGE_LEFT = 4;
    private static final int FLOOR_IN_FLAT = 5;
    private static final int FLOOR_IN_SPHERE = 6;
    private static final int FLOOR_IN_FLOOR = 7;
    private static final int WALL_LEAVES_DISH = 8;
    private static final int LIP_BEYOND_DISH = 9;

    private final CrownSolid crown;
    int curves;
    private int[] type = new int[16];
    private int[] pocket = new int[16];
    private int[] other = new int[16];
    /** Greatest distance in mm between neighbouring samples, a measure of what can hide between them. */
    double[] spacing = new double[16];

    private double[] sampleX = new double[16 * SAMPLES];
    private double[] sampleY = new double[16 * SAMPLES];
    private double[] sampleZ = new double[16 * SAMPLES];
    private double[] samplePx = new double[16 * SAMPLES];
    private double[] samplePy = new double[16 * SAMPLES];
    private double[] samplePz = new double[16 * SAMPLES];

    /** The last point found. */
    double x;

    double y;
    double z;
    /** Direction from the pocket's axis into the wall's metal at the last point; zero where the edge is no wall's. */
    double px;

    double py;
    double pz;

    CrownEdges(CrownSolid crown) {
        this.crown = crown;
    }

    /** Lists and samples the edges of the crown as it is set now. */
    void trace() {
        curves = 0;
        add(LAND, 0, 0);
        if (crown.dished()) {
            add(DISH_RIM, 0, 0);
        }
        for (int k = 0; k < crown.pockets; k++) {
            add(LIP, k, 0);
            if (Math.abs(crown.az[k]) > 1e-9) {
                add(FLOOR_IN_FLAT, k, 0);
            }
            if (crown.domed() || crown.dished()) {
                add(FLOOR_IN_SPHERE, k, 0);
            }
            if (crown.dished()) {
                add(WALL_LEAVES_DISH, k, 0);
                add(LIP_BEYOND_DISH, k, 0);
            }
            for (int j = 0; j < crown.pockets; j++) {
                if (j != k) {
                    add(RIDGE_ENTERED, k, j);
                    add(RIDGE_LEFT, k, j);
                }
                if (j > k) {
                    add(FLOOR_IN_FLOOR, k, j);
                }
            }
        }
    }

    private void add(int kind, int k, int j) {
        if (curves == type.length) {
            grow();
        }
        int c = curves;
        type[c] = kind;
        pocket[c] = k;
        other[c] = j;
        boolean any = false;
        double widest = 0;
        for (int i = 0; i < SAMPLES; i++) {
            int at = c * SAMPLES + i;
            boolean real = at(c, i / (double) SAMPLES);
            any |= real;
            sampleX[at] = real ? x : Double.NaN;
            sampleY[at] = y;
            sampleZ[at] = z;
            samplePx[at] = px;
            samplePy[at] = py;
            samplePz[at] = pz;
            if (i > 0 && real) {
                double step = Math.hypot(Math.hypot(x - sampleX[at - 1], y - sampleY[at - 1]), z - sampleZ[at - 1]);
                widest = step > widest ? step : widest;
            }
        }
        if (any) {
            spacing[c] = Math.max(widest, crown.landRadius / SAMPLES);
            curves++;
        }
    }

    private void grow() {
        int n = 2 * type.length;
        type = java.util.Arrays.copyOf(type, n);
        pocket = java.util.Arrays.copyOf(pocket, n);
        other = java.util.Arrays.copyOf(other, n);
        spacing = java.util.Arrays.copyOf(spacing, n);
        sampleX = java.util.Arrays.copyOf(sampleX, n * SAMPLES);
        sampleY = java.util.Arrays.copyOf(sampleY, n * SAMPLES);
        sampleZ = java.util.Arrays.copyOf(sampleZ, n * SAMPLES);
        samplePx = java.util.Arrays.copyOf(samplePx, n * SAMPLES);
        samplePy = java.util.Arrays.copyOf(samplePy, n * SAMPLES);
        samplePz = java.util.Arrays.copyOf(samplePz, n * SAMPLES);
    }

    /** Recalls a sampled point; false where the curve is not there. */
    boolean sample(int curve, int i) {
        int at = curve * SAMPLES + i;
        x = sampleX[at];
        y = sampleY[at];
        z = sampleZ[at];
        px = samplePx[at];
        py = samplePy[at];
        pz = samplePz[at];
        return !Double.isNaN(x);
    }

    boolean isLand(int curve) {
        return type[curve] == LAND;
    }

    /** The pocket whose lip a curve is, or -1. */
    int lipOf(int curve) {
        return type[curve] == LIP ? pocket[curve] : -1;
    }

    /** Finds the point of a curve at a parameter; false where the curve is not there. */
    boolean at(int curve, double s) {
        px = 0;
        py = 0;
        pz = 0;
        int k = pocket[curve];
        double turn = 2 * Math.PI * s;
        return switch (type[curve]) {
            case LAND -> landEdge(turn);
            case DISH_RIM -> found(-1, crown.baseRadius * Math.cos(turn), crown.baseRadius * Math.sin(turn), 0);
            case LIP -> lip(k, turn);
            case RIDGE_ENTERED -> ridge(k, other[curve], turn, true);
            case RIDGE_LEFT -> ridge(k, other[curve], turn, false);
            case FLOOR_IN_FLAT -> floorInFlat(k, 2 * s - 1);
            case FLOOR_IN_SPHERE -> floorInSphere(k, turn);
            case WALL_LEAVES_DISH -> beyondDish(k, turn, false);
            case LIP_BEYOND_DISH -> beyondDish(k, turn, true);
            default -> floorInFloor(k, other[curve], 2 * s - 1);
        };
    }

    private boolean found(int except, double atX, double atY, double atZ) {
        x = atX;
        y = atY;
        z = atZ;
        return !crown.removed(except, atX, atY, atZ);
    }

    private boolean landEdge(double turn) {
        double r = crown.landRadius * (1 - 1e-12);
        double above = crown.highest + 1;
        x = r * Math.cos(turn);
        y = r * Math.sin(turn);
        double fall = crown.travel(x, y, above, 0, 0, -1);
        z = above - fall;
        return fall < Double.POSITIVE_INFINITY;
    }

    /** Sets x, y, z to the foot of pocket k's wall on its floor, and p to the direction into the metal. */
    private void wallFoot(int k, double turn) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        px = c * crown.ax[k] + s * crown.bx[k];
        py = c * crown.ay[k] + s * crown.by[k];
        pz = c * crown.az[k];
        x = crown.fx[k] + crown.radius[k] * px;
        y = crown.fy[k] + crown.radius[k] * py;
        z = crown.fz[k] + crown.radius[k] * pz;
    }

    /** Length of wall from its foot to where it comes out of the uncut crown; negative when its foot is outside already. */
    private double wallHeight(int k) {
        if (!crown.inBase(x, y, z)) {
            return -1;
        }
        double vx = crown.ux[k];
        double vy = crown.uy[k];
        double vz = crown.uz[k];
        double height = -z / vz;
        if (crown.domed() || crown.dished()) {
            double dz = z - crown.sphereZ;
            double b = x * vx + y * vy + dz * vz;
            double d = b * b - (x * x + y * y + dz * dz - crown.sphereRadius * crown.sphereRadius);
            if (d > 0) {
                double in = -b - Math.sqrt(d);
                double out = -b + Math.sqrt(d);
                if (crown.domed() && in <= height && out > height) {
                    height = out;
                } else if (crown.dished() && in > 0 && in < height) {
                    height = in;
                }
            }
        }
        double a = vx * vx + vy * vy;
        if (a > 1e-14) {
            double b = x * vx + y * vy;
            double d = b * b - a * (x * x + y * y - crown.landRadius * crown.landRadius);
            height = d > 0 ? Math.min(height, (-b + Math.sqrt(d)) / a) : -1;
        }
        return height;
    }

    private boolean lip(int k, double turn) {
        wallFoot(k, turn);
        double height = wallHeight(k);
        return height >= 0 && found(k, x + height * crown.ux[k], y + height * crown.uy[k], z + height * crown.uz[k]);
    }

    /** Where the wall of pocket k, having crossed the dish, enters metal again, or comes out of it at the flat. */
    private boolean beyondDish(int k, double turn, boolean lip) {
        wallFoot(k, turn);
        double vx = crown.ux[k];
        double vy = crown.uy[k];
        double vz = crown.uz[k];
        double dz = z - crown.sphereZ;
        double b = x * vx + y * vy + dz * vz;
        double d = b * b - (x * x + y * y + dz * dz - crown.sphereRadius * crown.sphereRadius);
        double out = d > 0 ? -b + Math.sqrt(d) : -1;
        double flat = -z / vz;
        double t = lip ? flat : out;
        x += t * vx;
        y += t * vy;
        z += t * vz;
        return out > 0 && out < flat && x * x + y * y <= crown.landRadius * crown.landRadius && found(k, x, y, z);
    }

    /** Where the wall of pocket k runs into pocket j, or out of it again. */
    private boolean ridge(int k, int j, double turn, boolean entered) {
        wallFoot(k, turn);
        double height = wallHeight(k);
        if (height < 0) {
            return false;
        }
        double along = crown.axial(j, x, y, z);
        double rate = crown.ux[k] * crown.ux[j] + crown.uy[k] * crown.uy[j] + crown.uz[k] * crown.uz[j];
        double rx = x - crown.fx[j];
        double ry = y - crown.fy[j];
        double rz = z - crown.fz[j];
        double a = 1 - rate * rate;
        double b = rx * crown.ux[k] + ry * crown.uy[k] + rz * crown.uz[k] - along * rate;
        double c = rx * rx + ry * ry + rz * rz - along * along - crown.radius[j] * crown.radius[j];
        double in = Double.NEGATIVE_INFINITY;
        double out = Double.POSITIVE_INFINITY;
        if (a < 1e-14) {
            if (c >= 0) {
                return false;
            }
        } else {
            double d = b * b - a * c;
            if (d <= 0) {
                return false;
            }
            in = (-b - Math.sqrt(d)) / a;
            out = (-b + Math.sqrt(d)) / a;
        }
        if (rate > 1e-12) {
            in = Math.max(in, -along / rate);
        } else if (rate < -1e-12) {
            out = Math.min(out, -along / rate);
        }
        double t = entered ? in : out;
        return in < out
                && t > 0
                && t < height
                && found(k, x + t * crown.ux[k], y + t * crown.uy[k], z + t * crown.uz[k]);
    }

    private boolean onFloor(int k) {
        double limit = crown.radius[k] + CrownSolid.ON_FACE_MM;
        double dx = x - crown.fx[k];
        double dy = y - crown.fy[k];
        double dz = z - crown.fz[k];
        return dx * dx + dy * dy + dz * dz <= limit * limit;
    }

    private boolean floorInFlat(int k, double s) {
        double up = -crown.fz[k] / crown.az[k];
        double across = s * crown.radius[k];
        double atX = crown.fx[k] + up * crown.ax[k] + across * crown.bx[k];
        double atY = crown.fy[k] + up * crown.ay[k] + across * crown.by[k];
        double r = Math.hypot(atX, atY);
        return found(k, atX, atY, 0) && onFloor(k) && r >= crown.baseRadius && r <= crown.landRadius;
    }

    private boolean floorInSphere(int k, double turn) {
        double h = crown.fx[k] * crown.ux[k] + crown.fy[k] * crown.uy[k] + (crown.fz[k] - crown.sphereZ) * crown.uz[k];
        double r2 = crown.sphereRadius * crown.sphereRadius - h * h;
        if (r2 <= 0) {
            return false;
        }
        double c = Math.sqrt(r2) * Math.cos(turn);
        double s = Math.sqrt(r2) * Math.sin(turn);
        return found(
                        k,
                        h * crown.ux[k] + c * crown.ax[k] + s * crown.bx[k],
                        h * crown.uy[k] + c * crown.ay[k] + s * crown.by[k],
                        crown.sphereZ + h * crown.uz[k] + c * crown.az[k])
                && crown.domed() == z >= 0
                && onFloor(k);
    }

    private boolean floorInFloor(int k, int j, double s) {
        double dx = crown.uy[k] * crown.uz[j] - crown.uz[k] * crown.uy[j];
        double dy = crown.uz[k] * crown.ux[j] - crown.ux[k] * crown.uz[j];
        double dz = crown.ux[k] * crown.uy[j] - crown.uy[k] * crown.ux[j];
        double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
        if (length < 1e-9) {
            return false;
        }
        // in floor k, square to the line, towards it
        double ex = (dy * crown.uz[k] - dz * crown.uy[k]) / length;
        double ey = (dz * crown.ux[k] - dx * crown.uz[k]) / length;
        double ez = (dx * crown.uy[k] - dy * crown.ux[k]) / length;
        double toward = ex * crown.ux[j] + ey * crown.uy[j] + ez * crown.uz[j];
        double reach = -crown.axial(j, crown.fx[k], crown.fy[k], crown.fz[k]) / toward;
        double along = s * crown.radius[k] / length;
        x = crown.fx[k] + reach * ex + along * dx;
        y = crown.fy[k] + reach * ey + along * dy;
        z = crown.fz[k] + reach * ez + along * dz;
        return onFloor(k) && onFloor(j) && crown.inBase(x, y, z) && removedByNoThird(k, j);
    }

    private boolean removedByNoThird(int k, int j) {
        for (int i = 0; i < crown.pockets; i++) {
            if (i != k
                    && i != j
                    && crown.axial(i, x, y, z) > CrownSolid.ON_FACE_MM
                    && crown.radial(i, x, y, z) < crown.radius[i]) {
                return false;
            }
        }
        return true;
    }
}
