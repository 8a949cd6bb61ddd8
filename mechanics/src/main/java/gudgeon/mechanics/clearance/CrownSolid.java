package gudgeon.mechanics.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;

/**
 * The metal of a crown as a solid, in the crown's frame: the reference plane is z = 0. Metal is what lies within the top land's
 * cylinder, under the base surface (flat, dome or dish), and in no pocket. Lengths in mm. Reused between crowns, so that a
 * sweep allocates nothing.
 */
final class CrownSolid {
    /** Points closer to a face than this, in mm, count as lying on it. */
    static final double ON_FACE_MM = 1e-7;

    private static final int FLAT = 0;
    private static final int DOME = 1;
    private static final int DISH = 2;

    double landRadius;
    int form;
    /** Radius of the base circle of dome or dish, 0 for a flat crown. */
    double baseRadius;

    double sphereRadius;
    /** Height of the sphere's centre on the bore axis. */
    double sphereZ;

    double highest;
    int pockets;
    double[] radius = {};
    double[] ux = {};
    double[] uy = {};
    double[] uz = {};
    /** Centre of each pocket's floor. */
    double[] fx = {};

    double[] fy = {};
    double[] fz = {};
    /** First of two directions that span each floor, along the azimuth; the second is (-sin azimuth, cos azimuth, 0). */
    double[] ax = {};

    double[] ay = {};
    double[] az = {};
    double[] bx = {};
    double[] by = {};

    /** Foot of the last distance found, in the crown's frame. */
    double footX;

    double footY;
    double footZ;

    // void intervals along a line
    private double[] from = new double[8];
    private double[] to = new double[8];
    private int voids;
    // where a line enters and leaves a cylinder or sphere
    private double enter;
    private double leave;

    void set(Crown crown) {
        landRadius = crown.landDiameterMm() / 2;
        setForm(crown.form());
        pockets = crown.pockets().size();
        if (radius.length < pockets) {
            grow();
        }
        for (int k = 0; k < pockets; k++) {
            setPocket(k, crown.pockets().get(k));
        }
    }

    private void setForm(CrownForm base) {
        form = FLAT;
        baseRadius = 0;
        sphereRadius = 0;
        sphereZ = 0;
        highest = 0;
        if (base instanceof CrownForm.Dome dome) {
            form = DOME;
            baseRadius = dome.baseDiameterMm() / 2;
            sphereRadius = capSphere(baseRadius, dome.heightMm());
            sphereZ = dome.heightMm() - sphereRadius;
            highest = dome.heightMm();
        } else if (base instanceof CrownForm.Dish dish) {
            form = DISH;
            baseRadius = dish.rimDiameterMm() / 2;
            sphereRadius = capSphere(baseRadius, dish.depthMm());
            sphereZ = sphereRadius - dish.depthMm();
        }
    }

    /** Radius of the sphere of a cap: (b^2 + h^2) / 2h, from the right triangle of centre, rim and axis. */
    private static double capSphere(double base, double height) {
        return (base * base + height * height) / (2 * height);
    }

    private void grow() {
        radius = new double[pockets];
        ux = new double[pockets];
        uy = new double[pockets];
        uz = new double[pockets];
        fx = new double[pockets];
        fy = new double[pockets];
        fz = new double[pockets];
        ax = new double[pockets];
        ay = new double[pockets];
        az = new double[pockets];
        bx = new double[pockets];
        by = new double[pockets];
        from = new double[pockets + 8];
        to = new double[pockets + 8];
    }

    private void setPocket(int k, Pocket pocket) {
        double azimuth = Math.toRadians(pocket.azimuthDeg());
        double tilt = Math.toRadians(pocket.tiltDeg());
        double cos = Math.cos(azimuth);
        double sin = Math.sin(azimuth);
        radius[k] = pocket.diameterMm() / 2;
        ux[k] = Math.sin(tilt) * cos;
        uy[k] = Math.sin(tilt) * sin;
        uz[k] = Math.cos(tilt);
        fx[k] = pocket.offsetMm() * cos - pocket.depthMm() * ux[k];
        fy[k] = pocket.offsetMm() * sin - pocket.depthMm() * uy[k];
        fz[k] = -pocket.depthMm() * uz[k];
        ax[k] = Math.cos(tilt) * cos;
        ay[k] = Math.cos(tilt) * sin;
        az[k] = -Math.sin(tilt);
        bx[k] = -sin;
        by[k] = cos;
    }

    boolean domed() {
        return form == DOME;
    }

    boolean dished() {
        return form == DISH;
    }

    /** Height of a point above pocket k's floor, along the pocket's axis. */
    double axial(int k, double x, double y, double z) {
        return (x - fx[k]) * ux[k] + (y - fy[k]) * uy[k] + (z - fz[k]) * uz[k];
    }

    /** Distance of a point from pocket k's axis. */
    double radial(int k, double x, double y, double z) {
        double a = axial(k, x, y, z);
        double dx = x - fx[k] - a * ux[k];
        double dy = y - fy[k] - a * uy[k];
        double dz = z - fz[k] - a * uz[k];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Height of the base surface, before pockets, at a distance from the bore axis. */
    private double baseHeight(double r2) {
        if (form == FLAT || r2 >= baseRadius * baseRadius) {
            return 0;
        }
        double rise = Math.sqrt(sphereRadius * sphereRadius - r2);
        return form == DOME ? sphereZ + rise : sphereZ - rise;
    }

    /** Whether a point lies in or on the crown as it was before pockets were cut. */
    boolean inBase(double x, double y, double z) {
        double r2 = x * x + y * y;
        double land = landRadius + ON_FACE_MM;
        return r2 <= land * land && z <= baseHeight(r2) + ON_FACE_MM;
    }

    /** Whether a pocket other than {@code except} has removed the metal around a point. */
    boolean removed(int except, double x, double y, double z) {
        for (int k = 0; k < pockets; k++) {
            if (k != except) {
                double a = axial(k, x, y, z);
                if (a > ON_FACE_MM) {
                    double dx = x - fx[k] - a * ux[k];
                    double dy = y - fy[k] - a * uy[k];
                    double dz = z - fz[k] - a * uz[k];
                    double within = radius[k] - ON_FACE_MM;
                    if (dx * dx + dy * dy + dz * dz < within * within) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    boolean metal(double x, double y, double z) {
        return inBase(x, y, z) && !removed(-1, x, y, z);
    }

    /**
     * How far a point may travel along a downward unit direction before it meets metal; negative when it is in metal already:
     * how far back that metal began. Positive infinity when it meets none.
     */
    double travel(double x, double y, double z, double wx, double wy, double wz) {
        voids = 0;
        voidOutsideLand(x, y, wx, wy);
        voidAboveBase(x, y, z, wx, wy, wz);
        for (int k = 0; k < pockets; k++) {
            voidInPocket(k, x, y, z, wx, wy, wz);
        }
        return startOfMetal();
    }

    private double startOfMetal() {
        double t = 0;
        boolean moved = true;
        boolean inVoid = false;
        while (moved) {
            moved = false;
            for (int i = 0; i < voids; i++) {
                if (from[i] <= t + 1e-12 && to[i] > t) {
                    t = to[i];
                    inVoid = true;
                    moved = true;
                }
            }
        }
        if (inVoid) {
            return t;
        }
        double began = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < voids; i++) {
            if (to[i] <= 0 && to[i] > began) {
                began = to[i];
            }
        }
        return began;
    }

    private void addVoid(double lo, double hi) {
        if (hi > lo) {
            from[voids] = lo;
            to[voids++] = hi;
        }
    }

    private void voidOutsideLand(double x, double y, double wx, double wy) {
        double a = wx * wx + wy * wy;
        double b = x * wx + y * wy;
        double c = x * x + y * y - landRadius * landRadius;
        if (!crosses(a, b, c)) {
            addVoid(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        } else {
            addVoid(Double.NEGATIVE_INFINITY, enter);
            addVoid(leave, Double.POSITIVE_INFINITY);
        }
    }

    private void voidAboveBase(double x, double y, double z, double wx, double wy, double wz) {
        double plane = -z / wz;
        if (form == FLAT) {
            addVoid(Double.NEGATIVE_INFINITY, plane);
            return;
        }
        double dz = z - sphereZ;
        boolean hit = crosses(1, x * wx + y * wy + dz * wz, x * x + y * y + dz * dz - sphereRadius * sphereRadius);
        if (form == DISH) {
            addVoid(Double.NEGATIVE_INFINITY, plane);
            if (hit) {
                addVoid(enter, leave);
            }
        } else if (hit && enter < plane) {
            addVoid(Double.NEGATIVE_INFINITY, enter);
            addVoid(leave, plane);
        } else {
            addVoid(Double.NEGATIVE_INFINITY, plane);
        }
    }

    private void voidInPocket(int k, double x, double y, double z, double wx, double wy, double wz) {
        double rx = x - fx[k];
        double ry = y - fy[k];
        double rz = z - fz[k];
        double along = rx * ux[k] + ry * uy[k] + rz * uz[k];
        double rate = wx * ux[k] + wy * uy[k] + wz * uz[k];
        double a = 1 - rate * rate;
        double b = rx * wx + ry * wy + rz * wz - along * rate;
        double c = rx * rx + ry * ry + rz * rz - along * along - radius[k] * radius[k];
        if (!crosses(a, b, c)) {
            return;
        }
        double lo = enter;
        double hi = leave;
        if (rate < -1e-12) {
            hi = Math.min(hi, -along / rate);
        } else if (rate > 1e-12) {
            lo = Math.max(lo, -along / rate);
        } else if (along <= 0) {
            return;
        }
        addVoid(lo, hi);
    }

    /** Where a t^2 + 2 b t + c is negative; false when nowhere. Sets {@link #enter} and {@link #leave}. */
    private boolean crosses(double a, double b, double c) {
        if (a < 1e-14) {
            enter = Double.NEGATIVE_INFINITY;
            leave = Double.POSITIVE_INFINITY;
            return c < 0;
        }
        double d = b * b - a * c;
        if (d <= 0) {
            return false;
        }
        double root = Math.sqrt(d);
        enter = (-b - root) / a;
        leave = (-b + root) / a;
        return true;
    }

    /**
     * Distance of a point to the nearest face of the metal, negative inside it. Only feet that lie on a face count; the crown's
     * edges are measured from the other side, against the valve. Sets the foot.
     */
    double distanceToFaces(double x, double y, double z) {
        boolean inside = metal(x, y, z);
        double least = Double.POSITIVE_INFINITY;
        double r2 = x * x + y * y;
        if (r2 >= baseRadius * baseRadius && r2 <= landRadius * landRadius && inside == z <= 0) {
            least = keep(least, Math.abs(z), -1, x, y, 0);
        }
        if (form != FLAT) {
            least = toSphere(least, x, y, z, inside);
        }
        for (int k = 0; k < pockets; k++) {
            least = toPocket(least, k, x, y, z, inside);
        }
        if (!inside) {
            return least;
        }
        if (least == Double.POSITIVE_INFINITY) {
            least = -travel(x, y, z, 0, 0, -1);
            footX = x;
            footY = y;
            footZ = z + least;
        }
        return -least;
    }

    private double keep(double least, double distance, int except, double x, double y, double z) {
        if (distance < least && !removed(except, x, y, z)) {
            footX = x;
            footY = y;
            footZ = z;
            return distance;
        }
        return least;
    }

    private double toSphere(double least, double x, double y, double z, boolean inside) {
        double dz = z - sphereZ;
        double d = Math.sqrt(x * x + y * y + dz * dz);
        boolean beyondSphere = d > sphereRadius;
        // a dome's metal lies within its sphere, a dish's beyond it: only a point on its own side has its foot there
        boolean onItsSide = form == DOME ? inside != beyondSphere : inside == beyondSphere;
        if (d < 1e-12 || !onItsSide) {
            return least;
        }
        double scale = sphereRadius / d;
        double sz = sphereZ + dz * scale;
        boolean onCap = form == DOME ? sz >= 0 : sz <= 0;
        return onCap ? keep(least, Math.abs(d - sphereRadius), -1, x * scale, y * scale, sz) : least;
    }

    private double toPocket(double least, int k, double x, double y, double z, boolean inside) {
        double a = axial(k, x, y, z);
        double dx = x - fx[k] - a * ux[k];
        double dy = y - fy[k] - a * uy[k];
        double dz = z - fz[k] - a * uz[k];
        double rho = Math.sqrt(dx * dx + dy * dy + dz * dz);
        double best = least;
        if (rho <= radius[k] && inside == a <= 0 && Math.abs(a) < best) {
            double px = x - a * ux[k];
            double py = y - a * uy[k];
            double pz = z - a * uz[k];
            if (inBase(px, py, pz)) {
                best = keep(best, Math.abs(a), k, px, py, pz);
            }
        }
        double wall = Math.abs(radius[k] - rho);
        if (a >= 0 && inside == rho >= radius[k] && rho > 1e-12 && wall < best) {
            double scale = radius[k] / rho - 1;
            double px = x + dx * scale;
            double py = y + dy * scale;
            double pz = z + dz * scale;
            if (inBase(px, py, pz)) {
                best = keep(best, wall, k, px, py, pz);
            }
        }
        return best;
    }
}
