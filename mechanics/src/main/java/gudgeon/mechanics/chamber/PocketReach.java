package gudgeon.mechanics.chamber;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How far a pocket reaches: outwards, downwards, and towards a circle about the bore axis. A pocket mirrors in the plane of its
 * azimuth, so all is found in a frame with x along the azimuth, and y 0 or more. Lengths in mm.
 */
final class PocketReach {
    private static final int SCAN = 180;

    private final PocketSpace space;
    private final double land;
    private final double sin;
    private final double cos;

    PocketReach(Pocket pocket, double landRadius) {
        space = new Pocket(pocket.diameterMm(), pocket.depthMm(), pocket.offsetMm(), 0, pocket.tiltDeg()).space();
        land = landRadius;
        sin = space.ux;
        cos = space.uz;
    }

    /** A point in the frame along the azimuth. */
    record Point(double x, double y, double z) {
        double radius() {
            return Math.hypot(x, y);
        }

        MetalLeft left(double mm, Pocket pocket) {
            double azimuth = Math.toRadians(pocket.azimuthDeg());
            return new MetalLeft(
                    mm,
                    x * Math.cos(azimuth) - y * Math.sin(azimuth),
                    x * Math.sin(azimuth) + y * Math.cos(azimuth),
                    z);
        }
    }

    /** A point and its distance from the pocket, negative inside. */
    record Nearest(Point point, double mm) {
        MetalLeft at(Pocket pocket) {
            return point.left(mm, pocket);
        }
    }

    /**
     * The point of the pocket at or below a height that is farthest from the bore axis. That part of the pocket is convex, so the
     * farthest point is one where a line along the wall ends: on the floor's rim, or on the ellipse that the wall cuts from the
     * plane at that height. Empty when the pocket ends above it.
     */
    Optional<Point> farthestBelow(double height) {
        Optional<Point> onRim = farthestOnRim(height);
        Optional<Point> onPlane = farthestOnPlane(height);
        if (onRim.isPresent() && onPlane.isPresent()) {
            return onRim.get().radius() > onPlane.get().radius() ? onRim : onPlane;
        }
        return onRim.isPresent() ? onRim : onPlane;
    }

    /** On the rim, with c the cosine of the angle around it, r^2 is a constant + 2 x R cos(tilt) c - (R sin(tilt) c)^2. */
    private Optional<Point> farthestOnRim(double height) {
        double fall = space.radius * sin;
        double low = -1;
        double high = 1;
        if (fall > 0) {
            low = Math.max(low, (space.fz - height) / fall);
        } else if (fall < 0) {
            high = Math.min(high, (space.fz - height) / fall);
        } else if (space.fz > height) {
            return Optional.empty();
        }
        if (low > high) {
            return Optional.empty();
        }
        double linear = space.fx * space.radius * cos;
        double square = fall * fall;
        double best = Math.abs(linear) >= square ? Math.copySign(1, linear) : linear / square;
        return Optional.of(onRim(Math.min(Math.max(best, low), high)));
    }

    private Point onRim(double c) {
        return new Point(
                space.fx + space.radius * cos * c,
                space.radius * Math.sqrt(1 - c * c),
                space.fz - space.radius * sin * c);
    }

    /** On the ellipse r^2 curves upwards in c, so the farthest point is at one end of the part that is above the floor. */
    private Optional<Point> farthestOnPlane(double height) {
        double rise = (height - space.fz) / cos;
        double slope = space.radius * sin / cos;
        double low = -1;
        double high = 1;
        if (slope > 0) {
            low = Math.max(low, -rise / slope);
        } else if (slope < 0) {
            high = Math.min(high, -rise / slope);
        } else if (rise < 0) {
            return Optional.empty();
        }
        if (low > high) {
            return Optional.empty();
        }
        Point first = onPlane(height, rise, low);
        Point last = onPlane(height, rise, high);
        return Optional.of(first.radius() > last.radius() ? first : last);
    }

    private Point onPlane(double height, double rise, double c) {
        return new Point(space.fx + sin * rise + space.radius / cos * c, space.radius * Math.sqrt(1 - c * c), height);
    }

    /** The lowest point of the floor within the land: downhill along the azimuth; of a level floor, the outermost. */
    Point lowest() {
        double half = space.radius * cos;
        boolean outward = sin > 0 || (sin == 0 && space.fx >= 0);
        double x = outward ? Math.min(space.fx + half, land) : Math.max(space.fx - half, -land);
        return new Point(x, 0, space.fz - (x - space.fx) * sin / cos);
    }

    /** The point of a level circle about the bore axis that is nearest to the pocket, or deepest in it. */
    Nearest circleToPocket(double circleRadius, double height) {
        DoubleUnaryOperator distance =
                t -> space.distance(circleRadius * Math.cos(t), circleRadius * Math.sin(t), height);
        double t = leastAt(distance);
        return new Nearest(
                new Point(circleRadius * Math.cos(t), circleRadius * Math.sin(t), height), distance.applyAsDouble(t));
    }

    /** The point of the floor's rim that is nearest to the land's upper edge. */
    Nearest rimToLandEdge() {
        DoubleUnaryOperator distance = t -> {
            Point point = onRim(Math.cos(t));
            return Math.hypot(Math.max(land - point.radius(), 0), point.z());
        };
        double t = leastAt(distance);
        return new Nearest(onRim(Math.cos(t)), distance.applyAsDouble(t));
    }

    /** Where a function of an angle that mirrors in 0 and in 180 degrees is least: every low of a scan, narrowed. */
    private static double leastAt(DoubleUnaryOperator distance) {
        double step = Math.PI / SCAN;
        double least = 0;
        double before = distance.applyAsDouble(-step);
        double here = distance.applyAsDouble(0);
        for (int i = 0; i <= SCAN; i++) {
            double after = distance.applyAsDouble((i + 1) * step);
            if (here <= before && here <= after) {
                double low = narrow(distance, (i - 1) * step, (i + 1) * step);
                least = distance.applyAsDouble(low) < distance.applyAsDouble(least) ? low : least;
            }
            before = here;
            here = after;
        }
        return least;
    }

    /** Golden section on a stretch with one low. */
    private static double narrow(DoubleUnaryOperator distance, double from, double to) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        while (b - a > 1e-9) {
            double c = b - golden * (b - a);
            double d = a + golden * (b - a);
            if (distance.applyAsDouble(c) <= distance.applyAsDouble(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return (a + b) / 2;
    }
}
