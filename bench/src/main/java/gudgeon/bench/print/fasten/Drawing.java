package gudgeon.bench.print.fasten;

import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.fasten.CardHole;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What one sheet shows of a card. Its own lengths are in mm, to the right and downwards from the window's upper left corner.
 *
 * @param layout the layout it belongs to
 * @param window what it shows of the face
 */
public record Drawing(CardLayout layout, Window window) {
    /** A place on the sheet, mm. */
    public record Place(double x, double y) {
        /** To the right, as written. */
        public String across() {
            return mm(x);
        }

        /** Downwards, as written. */
        public String down() {
            return mm(y);
        }
    }

    /** A length in mm as a drawing is written, to a thousandth. */
    static String mm(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    /** Across, in px. */
    public long acrossPx() {
        return Math.round(CardLayout.px(window.width()));
    }

    /** From top to bottom, in px. */
    public long downPx() {
        return Math.round(CardLayout.px(window.height()));
    }

    /** What the drawing's own lengths span, so that each of them is 1 mm. */
    public String view() {
        return String.format(Locale.ROOT, "0 0 %.6f %.6f", window.width(), window.height());
    }

    /** The edge to cut or paste along, as a closed path just inside the window. */
    public String rim() {
        double in = 0.2;
        return "M " + mm(in) + " " + mm(in) + " H " + mm(window.width() - in) + " V " + mm(window.height() - in) + " H "
                + mm(in) + " Z";
    }

    /** The outline as a closed path; empty without one. */
    public String outline() {
        List<Place> corners = corners();
        return corners.isEmpty()
                ? ""
                : corners.stream()
                        .map(place -> place.across() + " " + place.down())
                        .collect(Collectors.joining(" L ", "M ", " Z"));
    }

    private List<Place> corners() {
        return layout.card().joint().outline().stream()
                .map(corner -> place(corner.x(), corner.y()))
                .toList();
    }

    /** The holes of which it has any part. */
    public List<Circle> circles() {
        return layout.card().placed().stream()
                .filter(hole -> hole.at()
                        .filter(at -> window.meets(at.x(), at.y(), CardLayout.reach(hole)))
                        .isPresent())
                .map(this::circle)
                .toList();
    }

    /** The marks by which it is laid on its neighbours. */
    public List<Register> registers() {
        return layout.tiling().marks().stream()
                .filter(mark -> window.holds(mark.x(), mark.y(), 0))
                .map(mark -> new Register(place(mark.x(), mark.y()), mark.name()))
                .toList();
    }

    /** The texts beside its holes, each where it hides no hole and no other text as far as there is room. */
    public List<Label> labels() {
        return new Labels(circles(), corners(), window.width(), window.height()).all();
    }

    /**
     * A hole on the sheet.
     *
     * @param at its middle
     * @param radius of what its fastener pushes through, or of the cross that marks it, mm
     * @param hole the hole
     */
    public record Circle(Place at, double radius, CardHole hole) {
        /** Its radius, as written. */
        public String size() {
            return mm(radius);
        }

        /** Both lines of its cross, as a path. */
        public String cross() {
            double arm = radius + (hole.throughMm().isPresent() ? 1.5 : 0);
            return "M " + mm(at.x - arm) + " " + at.down() + " H " + mm(at.x + arm) + " M " + at.across() + " "
                    + mm(at.y - arm) + " V " + mm(at.y + arm);
        }
    }

    /**
     * A mark by which sheets are laid on each other.
     *
     * @param at its middle
     * @param name its letter, the same on both sheets
     */
    public record Register(Place at, String name) {
        /** Its lines, as a path: a cross in a square that stands on its corner, so that nobody takes it for a hole. */
        public String path() {
            return String.format(
                    Locale.ROOT,
                    "M %1$.3f %4$.3f H %2$.3f M %3$.3f %5$.3f V %6$.3f M %1$.3f %4$.3f L %3$.3f %5$.3f L %2$.3f %4$.3f"
                            + " L %3$.3f %6$.3f Z",
                    at.x - 4,
                    at.x + 4,
                    at.x,
                    at.y,
                    at.y - 4,
                    at.y + 4);
        }
    }

    private Circle circle(CardHole hole) {
        Point at = hole.at().orElseThrow();
        return new Circle(place(at.x(), at.y()), CardLayout.reach(hole), hole);
    }

    private Place place(double x, double y) {
        return new Place(x - window.left(), window.top() - y);
    }
}
