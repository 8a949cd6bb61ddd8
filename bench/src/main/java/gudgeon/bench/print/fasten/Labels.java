package gudgeon.bench.print.fasten;

import gudgeon.bench.print.fasten.Drawing.Circle;
import gudgeon.bench.print.fasten.Drawing.Place;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where the texts of a sheet stand: each beside its hole, where it covers least of what is there already.
 *
 * @param circles the holes
 * @param corners the outline
 * @param width of the sheet's window, mm
 * @param height of it, mm
 */
record Labels(List<Circle> circles, List<Place> corners, double width, double height) {
    private static final double HEIGHT_MM = 11;
    /** Width of a letter of the fastener's line, at most about, mm. */
    private static final double LETTER_MM = 2.1;

    private static final double GAP_MM = 2;
    /** What a line through a text counts, as if it covered so much, mm². */
    private static final double STRUCK_MM2 = 20;

    List<Label> all() {
        List<Label> labels = new ArrayList<>();
        for (Circle circle : circles) {
            boxes(circle)
                    .min(Comparator.comparingDouble(box -> hidden(box, labels)))
                    .ifPresent(box -> labels.add(new Label(circle, box)));
        }
        return labels;
    }

    /** To its right, left, above, below and towards the four corners. */
    private static Stream<Window> boxes(Circle circle) {
        double wide = Math.max(8, LETTER_MM * circle.hole().fastener().length());
        double off = circle.radius() + GAP_MM;
        double x = circle.at().x();
        double y = circle.at().y();
        double right = x + off;
        double left = x - off - wide;
        double above = y - off - HEIGHT_MM;
        double below = y + off;
        return Stream.of(
                        new Place(right, y - HEIGHT_MM / 2),
                        new Place(left, y - HEIGHT_MM / 2),
                        new Place(x - wide / 2, above),
                        new Place(x - wide / 2, below),
                        new Place(right, y - HEIGHT_MM),
                        new Place(right, y),
                        new Place(left, y - HEIGHT_MM),
                        new Place(left, y))
                .map(corner -> new Window(corner.x(), corner.y(), wide, HEIGHT_MM));
    }

    /** How much of holes, lines, other texts and beyond the sheet a box covers, mm². */
    private double hidden(Window box, List<Label> labels) {
        double beyond = box.width() * box.height() - shared(box, new Window(0, 0, width, height));
        double holes = circles.stream()
                .mapToDouble(circle -> shared(box, around(circle)))
                .sum();
        double texts =
                labels.stream().mapToDouble(label -> shared(box, label.box())).sum();
        return 3 * beyond + 2 * holes + texts + STRUCK_MM2 * lines(box);
    }

    /** How many lines of the outline go through a box. */
    private long lines(Window box) {
        return IntStream.range(0, corners.size())
                .filter(i -> {
                    Place one = corners.get(i);
                    Place next = corners.get((i + 1) % corners.size());
                    return new Line2D.Double(one.x(), one.y(), next.x(), next.y())
                            .intersects(box.left(), box.bottom(), box.width(), box.height());
                })
                .count();
    }

    private static Window around(Circle circle) {
        double side = 2 * circle.radius() + 2;
        return new Window(circle.at().x() - side / 2, circle.at().y() - side / 2, side, side);
    }

    private static double shared(Window one, Window other) {
        double across = Math.min(one.right(), other.right()) - Math.max(one.left(), other.left());
        double up = Math.min(one.top(), other.top()) - Math.max(one.bottom(), other.bottom());
        return Math.max(0, across) * Math.max(0, up);
    }
}
