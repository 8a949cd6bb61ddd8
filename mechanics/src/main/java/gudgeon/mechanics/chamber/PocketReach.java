package gudgeon.mechanics.chamber;

import java.util.Optional;

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

        /** Distance to the groove, negative for how deep inside it. */
        double toGroove(double bottom, RingGroove groove) {
            double inward = bottom - radius();
            double above = z + groove.belowMm();
            return Math.hypot(Math.max(inward, 0), Math.max(above, 0)) + Math.min(Math.max(inward, above), 0);
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
    Nearest nearestTo(double circleRadius, double height) {
        double step = Math.PI / SCAN;
        double bestAngle = 0;
        double best = Double.POSITIVE_INFINITY;
        double before = toCircle(circleRadius, height, -step);
        double here = toCircle(circleRadius, height, 0);
        for (int i = 0; i <= SCAN; i++) {
            double after = toCircle(circleRadius, height, (i + 1) * step);
            if (here <= before && here <= after) {
                double angle = narrow(circleRadius, height, (i - 1) * step, (i + 1) * step);
                double distance = toCircle(circleRadius, height, angle);
                if (distance < best) {
                    best = distance;
                    bestAngle = angle;
                }
            }
            before = here;
            here = after;
        }
        return new Nearest(
                new Point(circleRadius * Math.cos(bestAngle), circleRadius * Math.sin(bestAngle), height), best);
    }

    private double toCircle(double circleRadius, double height, double angle) {
        return space.distance(circleRadius * Math.cos(angle), circleRadius * Math.sin(angle), height);
    }

    /** Golden section on a stretch with one low. */
    private double narrow(double circleRadius, double height, double from, double to) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = from;
        double b = to;
        while (b - a > 1e-9) {
            double c = b - golden * (b - a);
            double d = a + golden * (b - a);
            if (toCircle(circleRadius, height, c) <= toCircle(circleRadius, height, d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return (a + b) / 2;
    }
}
