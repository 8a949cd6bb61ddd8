package gudgeon.bench.web.entry;

import gudgeon.mechanics.plane.Pixel;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.fasten.MarkedPhoto;
import gudgeon.rebuild.fasten.MarkedPhoto.MeasuredApart;
import gudgeon.rebuild.fasten.SheetOfPaper;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Points as forms send them: two numbers in one field, or a list of such with one on each line. */
final class Marks {
    /** The names of a sheet's corners in a form, in the order of going round. */
    private static final List<String> CORNERS = List.of("top-left", "top-right", "bottom-right", "bottom-left");
    /** By how many points a finger misses, where the form does not say. */
    private static final double USUAL_WITHIN = 6;

    private Marks() {}

    /** The marks in a photo; empty after a refusal. */
    static Optional<MarkedPhoto> in(Form form) {
        Optional<SheetOfPaper> sheet =
                SheetOfPaper.of(form.text("size").isEmpty() ? form.text("sheet") : form.text("size"));
        if (sheet.isEmpty()) {
            form.refuse(
                    "The sheet's size can't be read. Choose a sheet, or write its width and height as it lies, such as"
                            + " 297 x 210 mm.");
        }
        if (!form.text("photo-hash").matches("[0-9a-f]{64}")) {
            form.refuse(
                    "It is not said which photo was marked. Open the photo from the joint's page and mark it there.");
        }
        List<Pixel> corners = new ArrayList<>();
        for (String corner : CORNERS) {
            pixel(form, "The sheet's corner " + corner.replace('-', ' '), form.text("corner." + corner))
                    .ifPresent(corners::add);
        }
        List<Pixel> outline = new ArrayList<>();
        form.text("marked-outline")
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(line -> pixel(form, "A corner of the outline", line).ifPresent(outline::add));
        Map<String, Pixel> holes = new TreeMap<>();
        form.starting("mark.")
                .forEach((id, text) -> pixel(form, "Hole " + id, text).ifPresent(pixel -> holes.put(id, pixel)));
        OptionalDouble within = form.number("within", "Marked within");
        boolean usable = within.isEmpty() || (within.getAsDouble() >= 0.5 && within.getAsDouble() <= 200);
        if (!usable) {
            form.refuse("Marks are within 0.5 to 200 points of the photo.");
        }
        boolean read = sheet.isPresent()
                && corners.size() == CORNERS.size()
                && usable
                && form.text("photo-hash").matches("[0-9a-f]{64}");
        return read
                ? Optional.of(new MarkedPhoto(
                        form.text("photo-hash"),
                        sheet.get(),
                        corners,
                        within.orElse(USUAL_WITHIN),
                        form.text("seen").equals("inside"),
                        outline,
                        holes,
                        check(form)))
                : Optional.empty();
    }

    private static Optional<MeasuredApart> check(Form form) {
        return form.text("apart").isEmpty()
                ? Optional.empty()
                : Optional.of(new MeasuredApart(form.text("apart-one"), form.text("apart-other"), form.text("apart")));
    }

    private static Optional<Pixel> pixel(Form form, String what, String text) {
        Optional<Point> point = numbers(text);
        if (point.isEmpty()) {
            form.refuse(
                    what + (text.isEmpty() ? " is not marked." : ": '" + text + "' is not two numbers.")
                            + " Touch it in the photo, or write how many points from the left and from above, such as 812 430.");
        }
        return point.map(found -> new Pixel(found.x(), found.y()));
    }

    /** The corners of an outline, one on each line. */
    static List<Point> outline(Form form) {
        List<Point> corners = new ArrayList<>();
        form.text("outline")
                .lines()
                .filter(line -> !line.isBlank())
                .forEach(
                        line -> numbers(line)
                                .ifPresentOrElse(
                                        corners::add,
                                        () -> form.refuse(
                                                "A corner of the outline, '" + line.strip()
                                                        + "', is not two numbers of millimetres. Write one corner on each line, such as 82 60.")));
        return corners;
    }

    /** A point from a field each; empty where one is no finite number. */
    static Optional<Point> point(String x, String y) {
        return numbers(x.replace(" ", "") + " " + y.replace(" ", ""));
    }

    private static Optional<Point> numbers(String text) {
        String[] parts = text.strip().split("[;\\s]+|,\\s+", -1);
        if (parts.length != 2) {
            return Optional.empty();
        }
        try {
            double x = Double.parseDouble(parts[0].replace(',', '.'));
            double y = Double.parseDouble(parts[1].replace(',', '.'));
            return Double.isFinite(x) && Double.isFinite(y) ? Optional.of(new Point(x, y)) : Optional.empty();
        } catch (NumberFormatException notOne) {
            return Optional.empty();
        }
    }
}
