package gudgeon.bench.web.timing;

import gudgeon.rebuild.timing.DiscMark;
import gudgeon.rebuild.timing.Timing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The degree disc as it is drawn: top dead centre above, degrees clockwise, in a square of {@value #SIZE} about its middle.
 *
 * @param ticks every thirty degrees
 * @param marks what was read and what is wanted
 */
public record DiscDrawing(List<Spoke> ticks, List<Spoke> marks) {
    /** Side of the square. */
    public static final int SIZE = 300;

    private static final double RIM = 120;

    public DiscDrawing {
        ticks = List.copyOf(ticks);
        marks = List.copyOf(marks);
    }

    /**
     * A line from the middle outwards.
     *
     * @param label what stands at its end
     * @param style how it is drawn
     * @param fromX its inner end
     * @param toX its outer end
     * @param atX where the label stands
     */
    public record Spoke(
            String label, String style, String fromX, String fromY, String toX, String toY, String atX, String atY) {
        static Spoke of(double deg, String label, String style, double from, double to, double at) {
            double sin = Math.sin(Math.toRadians(deg));
            double cos = Math.cos(Math.toRadians(deg));
            return new Spoke(
                    label,
                    style,
                    svg(from * sin),
                    svg(-from * cos),
                    svg(to * sin),
                    svg(-to * cos),
                    svg(at * sin),
                    svg(-at * cos + 4));
        }

        private static String svg(double value) {
            return String.format(Locale.ROOT, "%.1f", value);
        }
    }

    static DiscDrawing of(Timing timing) {
        List<Spoke> ticks = new ArrayList<>();
        for (int deg = 0; deg < 360; deg += 30) {
            ticks.add(Spoke.of(deg, deg == 0 ? "tdc" : deg == 180 ? "bdc" : deg + "°", "tick", RIM - 8, RIM, RIM + 16));
        }
        List<Spoke> marks = new ArrayList<>();
        int number = 0;
        for (DiscMark mark : timing.marks()) {
            number++;
            marks.add(Spoke.of(
                    mark.deg(),
                    String.valueOf(number),
                    mark.kind().name().toLowerCase(Locale.ROOT),
                    0,
                    RIM - 30,
                    RIM - 20));
        }
        return new DiscDrawing(ticks, marks);
    }
}
