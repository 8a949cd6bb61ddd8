package gudgeon.bench.web.measure;

import gudgeon.rebuild.book.Places;
import java.util.ArrayList;
import java.util.List;

/**
 * A sketch of where on a part a reading is taken: the heights as lines across a section, the axes as lines across a plan, those of
 * the place in question drawn heavy.
 *
 * @param heights the lines across the section, from the top
 * @param axes the lines across the plan
 */
public record PlaceDrawing(List<Line> heights, List<Line> axes) {
    private static final double SECTION_TOP = 12;
    private static final double SECTION_HEIGHT = 76;
    private static final double PLAN_X = 150;
    private static final double PLAN_Y = 50;
    private static final double PLAN_R = 40;

    public PlaceDrawing {
        heights = List.copyOf(heights);
        axes = List.copyOf(axes);
    }

    /** A line from one point to another in a drawing of 200 by 100. */
    public record Line(double x1, double y1, double x2, double y2, boolean here) {}

    /** The sketch of a place; nothing to draw where there is one only. */
    static PlaceDrawing of(Places places, String at) {
        return new PlaceDrawing(heights(places, at), axes(places, at));
    }

    /** Whether there is nothing to draw. */
    public boolean isEmpty() {
        return heights.isEmpty() || axes.isEmpty();
    }

    private static List<Line> heights(Places places, String at) {
        List<Line> lines = new ArrayList<>();
        int n = places.heights().size();
        for (int i = 0; i < n; i++) {
            String height = places.heights().get(i);
            double y = SECTION_TOP + SECTION_HEIGHT * (i + 0.5) / n;
            boolean here =
                    at.equals(height) || places.axes().stream().anyMatch(axis -> at.equals(places.at(height, axis)));
            lines.add(new Line(20, y, 80, y, here));
        }
        return lines;
    }

    private static List<Line> axes(Places places, String at) {
        List<Line> lines = new ArrayList<>();
        int n = places.axes().size();
        for (int i = 0; i < n; i++) {
            String axis = places.axes().get(i);
            double angle = Math.PI * i / n;
            double x = PLAN_R * Math.cos(angle);
            double y = PLAN_R * Math.sin(angle);
            boolean here =
                    at.equals(axis) || places.heights().stream().anyMatch(height -> at.equals(places.at(height, axis)));
            lines.add(new Line(PLAN_X - x, PLAN_Y - y, PLAN_X + x, PLAN_Y + y, here));
        }
        return lines;
    }
}
