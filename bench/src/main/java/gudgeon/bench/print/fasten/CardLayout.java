package gudgeon.bench.print.fasten;

import gudgeon.bench.print.Paper;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.fasten.Card;
import gudgeon.rebuild.fasten.CardHole;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a card at true size lies on its sheets.
 *
 * @param card the card; one hole at least has its place
 * @param sheet the sheet as it lies
 * @param tiling the windows, one a sheet
 */
public record CardLayout(Card card, Paper.Sheet sheet, Tiling tiling) {
    /** What no usual printer reaches, with some more, mm. */
    static final double MARGIN_MM = 10;
    /** Room above the drawing for names and below it for the number of the sheet, mm. */
    static final double BAND_MM = 14;
    /** Room under the drawing for the line to check the printer by, and a little to spare, mm. */
    static final double CHECK_MM = 17;
    /** The line to check the printer by, mm. */
    static final double LINE_MM = 100;
    /** Room kept round the face, mm. */
    private static final double AROUND_MM = 12;

    private static final double PX_PER_MM = 96 / 25.4;
    /** Half of a cross that marks a place only, mm. */
    static final double CROSS_MM = 4;
    /** More than anyone pastes together. */
    private static final long MOST_SHEETS = 48;

    /** A layout, or why there is none. */
    public sealed interface Asked {
        /** It can be printed. */
        record Ready(CardLayout layout) implements Asked {}

        /**
         * It can't.
         *
         * @param sentence why, and what to do
         */
        record Refused(String sentence) implements Asked {}
    }

    /** The layout on the fewest sheets of a paper; upright where it makes no difference. */
    public static Asked of(Card card, Paper paper) {
        Optional<String> refusal = card.refusal();
        if (refusal.isPresent()) {
            return new Asked.Refused(refusal.get());
        }
        CardLayout least = Stream.of(paper.upright(), paper.onItsSide())
                .map(sheet -> new CardLayout(card, sheet, tiling(face(card), sheet)))
                .min(Comparator.comparingLong(layout -> layout.tiling().sheets()))
                .orElseThrow();
        long sheets = least.tiling().sheets();
        return sheets > MOST_SHEETS
                ? new Asked.Refused(card.title() + " would take " + sheets + " sheets of " + paper.word()
                        + " at true size, which is more than " + MOST_SHEETS
                        + ". Check where its holes and corners lie: they are in mm.")
                : new Asked.Ready(least);
    }

    private static Tiling tiling(Window face, Paper.Sheet sheet) {
        double width = sheet.widthMm() - 2 * MARGIN_MM;
        double height = sheet.heightMm() - 2 * BAND_MM - CHECK_MM;
        boolean one = face.width() <= width && face.height() <= height;
        return new Tiling(
                face, whole(Math.floor(px(width))), whole(one ? Math.ceil(px(face.height())) : Math.floor(px(height))));
    }

    /** A length in mm in the px of a printed page, of which 96 make an inch (CSS Values 3). */
    static double px(double mm) {
        return mm * PX_PER_MM;
    }

    /** A drawing is fitted into whole px: it must be made of them, or it comes out smaller than true. */
    private static double whole(double px) {
        return px / PX_PER_MM;
    }

    private static Window face(Card card) {
        List<Point> points = Stream.concat(
                        card.joint().outline().stream(), card.placed().stream().flatMap(hole -> hole.at().stream()))
                .toList();
        double left = points.stream().mapToDouble(Point::x).min().orElseThrow() - AROUND_MM;
        double right = points.stream().mapToDouble(Point::x).max().orElseThrow() + AROUND_MM;
        double bottom = points.stream().mapToDouble(Point::y).min().orElseThrow() - AROUND_MM;
        double top = points.stream().mapToDouble(Point::y).max().orElseThrow() + AROUND_MM;
        return new Window(left, bottom, right - left, top - bottom);
    }

    /** Whether it goes on one sheet, so that the list stands under it. */
    public boolean isOne() {
        return tiling.sheets() == 1;
    }

    /** Its drawings, one a sheet. */
    public List<Drawing> drawings() {
        return tiling.windows().stream()
                .map(window -> new Drawing(this, window))
                .toList();
    }

    /** Half of what is drawn for a hole, mm. */
    static double reach(CardHole hole) {
        return hole.throughMm().orElse(2 * CROSS_MM) / 2;
    }
}
