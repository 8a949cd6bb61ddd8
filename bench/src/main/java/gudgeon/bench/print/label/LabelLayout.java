package gudgeon.bench.print.label;

import gudgeon.bench.print.Lettering;
import gudgeon.bench.print.label.Placed.Line;
import gudgeon.rebuild.bag.BagLabel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where everything stands on a label of one size. Lengths in mm from the label's upper left corner. */
final class LabelLayout {
    /** Read at arm's length. */
    private static final double BODY_POINTS = 11;

    private static final double LINE = 4.1;
    private static final double LOW = 30;
    private static final double NARROW = 45;
    private static final double LEAST_FREE_FOR_PEN = 5;
    private static final int LINES_WITH_PEN = 6;

    private final Lettering lettering;
    private final BagAddress address;
    private final double width;
    private final double height;
    private final double edge;
    private final double titlePoints;
    private final double titleHeight;
    private final double codeSize;
    private final double textWidth;

    LabelLayout(Lettering lettering, BagAddress address, LabelSheet sheet) {
        this.lettering = lettering;
        this.address = address;
        width = sheet.width();
        height = sheet.height();
        boolean low = height < LOW;
        edge = low ? 1.8 : 3;
        codeSize = Math.min(Math.min(height - 2 * edge, 0.34 * width), 30);
        textWidth = width - 2 * edge - codeSize - 1.5;
        boolean narrow = low || textWidth < NARROW;
        titlePoints = narrow ? 14 : 16;
        titleHeight = narrow ? 5.4 : 6.2;
    }

    Placed of(BagLabel label) {
        List<Line> lines = new ArrayList<>();
        double bottom = height - edge - LINE;
        String foot = address.name();
        double top = edge;
        double date = lettering.widthMm(label.date(), BODY_POINTS);
        if (lettering.widthMm(label.title(), titlePoints) + 2 + date <= textWidth) {
            lines.add(new Line(edge, top, titlePoints, label.title()));
            if (!label.date().isEmpty()) {
                lines.add(new Line(edge + textWidth - date, top + 1, BODY_POINTS, label.date()));
            }
            top += titleHeight;
        } else {
            foot = (label.date() + " " + foot).strip();
            for (String line : lettering.wrapped(label.title(), BODY_POINTS, textWidth, 2)) {
                lines.add(new Line(edge, top, BODY_POINTS, line));
                top += LINE;
            }
        }
        for (String line : body(label, (int) Math.floor((bottom - top) / LINE + 1e-6))) {
            lines.add(new Line(edge, top, BODY_POINTS, line));
            top += LINE;
        }
        lines.add(new Line(
                edge,
                bottom,
                BODY_POINTS,
                lettering.wrapped(foot, BODY_POINTS, textWidth, 1).get(0)));
        Optional<Code> code = Code.of(address.text(label.bag()), codeSize);
        return new Placed(
                lines,
                rules(top, bottom),
                edge,
                textWidth,
                code,
                width - edge - codeSize,
                (height - codeSize) / 2,
                codeSize);
    }

    /** What goes between title and foot; on a label with room for it, a line is left to be written on. */
    private List<String> body(BagLabel label, int room) {
        int most = room + 1 >= LINES_WITH_PEN ? room - 1 : room;
        List<String> lines = parts(label.parts(), Math.max(1, label.further().isEmpty() ? most : most - 1), most);
        for (String more : label.further()) {
            int left = most - lines.size();
            if (left > 0) {
                lines.addAll(lettering.wrapped(more, BODY_POINTS, textWidth, Math.min(2, left)));
            }
        }
        return lines;
    }

    private List<String> parts(List<String> parts, int room, int most) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            int left = Math.min(room, most) - lines.size() - (last ? 0 : 1);
            if (left < 1) {
                lines.add("and " + (parts.size() - i) + " more");
                return lines;
            }
            lines.addAll(lettering.wrapped(parts.get(i), BODY_POINTS, textWidth, Math.min(2, left)));
        }
        return lines;
    }

    private static List<Double> rules(double top, double bottom) {
        List<Double> rules = new ArrayList<>();
        for (double at = top + LEAST_FREE_FOR_PEN; at <= bottom; at += LEAST_FREE_FOR_PEN + 1) {
            rules.add(at);
        }
        return rules;
    }
}
