package gudgeon.bench.web.fasten;

import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.JointNow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A joint as it is drawn: millimetres to the right and downwards from the upper left of the drawing.
 *
 * @param width of the drawing
 * @param height of the drawing
 * @param reach radius of a hole's mark, so large that a thumb hits it
 * @param outline the outline's corners as an SVG polygon has them; empty where it is not known
 * @param spots its holes that have a place
 * @param unplaced its holes that have none
 */
public record HoleMap(
        double width, double height, double reach, String outline, List<Spot> spots, List<HoleNow> unplaced) {
    /** The mark of a hole against the longest side; a drawing as wide as a phone so has marks of a thumb's size. */
    private static final double REACH = 1 / 15.0;

    private static final double LEAST_MM = 20;

    public HoleMap {
        spots = List.copyOf(spots);
        unplaced = List.copyOf(unplaced);
    }

    /** A hole in the drawing. */
    public record Spot(HoleNow hole, double x, double y) {}

    /** The drawing of a joint, its holes in the order given, so that the keyboard goes round as the wrench does. */
    static HoleMap of(JointNow joint, List<String> order) {
        List<HoleNow> placed =
                joint.holes().stream().filter(hole -> hole.at().isPresent()).toList();
        List<Point> all = Stream.concat(
                        joint.outline().stream(), placed.stream().flatMap(hole -> hole.at().stream()))
                .toList();
        double left = all.stream().mapToDouble(Point::x).min().orElse(0);
        double right = all.stream().mapToDouble(Point::x).max().orElse(0);
        double low = all.stream().mapToDouble(Point::y).min().orElse(0);
        double high = all.stream().mapToDouble(Point::y).max().orElse(0);
        double reach = REACH * Math.max(LEAST_MM, Math.max(right - left, high - low));
        double edge = 1.25 * reach;
        List<Spot> spots = new ArrayList<>();
        for (HoleNow hole : placed) {
            Point at = hole.at().orElseThrow();
            spots.add(new Spot(hole, at.x() - left + edge, high - at.y() + edge));
        }
        spots.sort(Comparator.comparingInt(spot -> order.indexOf(spot.hole().id())));
        return new HoleMap(
                right - left + 2 * edge,
                high - low + 2 * edge,
                reach,
                joint.outline().stream()
                        .map(at -> svg(at.x() - left + edge) + "," + svg(high - at.y() + edge))
                        .collect(Collectors.joining(" ")),
                spots,
                joint.holes().stream().filter(hole -> hole.at().isEmpty()).toList());
    }

    /** What the drawing spans, as SVG has it. */
    public String viewBox() {
        return "0 0 " + svg(width) + " " + svg(height);
    }

    /** A length as SVG has it. */
    public static String svg(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm);
    }
}
