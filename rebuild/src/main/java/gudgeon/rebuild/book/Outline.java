package gudgeon.rebuild.book;

import java.util.List;

/**
 * The outline of a joint's face.
 *
 * @param corners three or more, in mm, either way round
 */
record Outline(List<Point> corners) {
    Outline {
        corners = List.copyOf(corners);
    }

    /** How far inside a point lies, in mm: its distance to the nearest side, below zero outside. */
    double insideMm(Point point) {
        double nearest = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Point from = corners.get(i);
            Point to = corners.get((i + 1) % corners.size());
            nearest = Math.min(nearest, distance(point, from, to));
            // a ray to the right crosses the outline an odd number of times from inside
            if (from.y() > point.y() != to.y() > point.y()) {
                double crossing = from.x() + (point.y() - from.y()) / (to.y() - from.y()) * (to.x() - from.x());
                inside ^= crossing > point.x();
            }
        }
        return inside ? nearest : -nearest;
    }

    private static double distance(Point point, Point from, Point to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double along = ((point.x() - from.x()) * x + (point.y() - from.y()) * y) / Math.max(x * x + y * y, 1e-12);
        double share = Math.min(1, Math.max(0, along));
        return Math.hypot(point.x() - from.x() - share * x, point.y() - from.y() - share * y);
    }
}
