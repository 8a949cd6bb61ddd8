package gudgeon.bench.print.label;

import gudgeon.bench.print.Paper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A sheet of labels. All lengths in mm, the sheet upright before the reader.
 *
 * @param paper the sheet
 * @param columns labels across
 * @param rows labels from top to bottom
 * @param width of a label
 * @param height of a label
 * @param gapAcross between two columns
 * @param gapDown between two rows
 * @param left from the sheet's edge to the first column
 * @param top from the sheet's edge to the first row
 */
public record LabelSheet(
        Paper paper,
        int columns,
        int rows,
        double width,
        double height,
        double gapAcross,
        double gapDown,
        double left,
        double top) {
    /** Smaller than this, neither a code nor three lines can be read. */
    static final double LEAST_WIDTH = 45;

    static final double LEAST_HEIGHT = 21;
    private static final int MOST = 40;
    private static final double NOTHING = 1e-6;

    /** A sheet whose labels stand in its middle, as on packs of the usual sizes. */
    public static LabelSheet centred(
            Paper paper, int columns, int rows, double width, double height, double gapAcross, double gapDown) {
        Paper.Sheet sheet = paper.upright();
        double left = (sheet.widthMm() - columns * width - (columns - 1) * gapAcross) / 2;
        double top = (sheet.heightMm() - rows * height - (rows - 1) * gapDown) / 2;
        return new LabelSheet(paper, columns, rows, width, height, gapAcross, gapDown, left, top);
    }

    /** How many labels it has. */
    public int count() {
        return columns * rows;
    }

    /** The same sheet with other margins. */
    public LabelSheet from(double newLeft, double newTop) {
        return new LabelSheet(paper, columns, rows, width, height, gapAcross, gapDown, newLeft, newTop);
    }

    /** From the sheet's left edge to a label, the labels counted across and then down, from 0. */
    public double leftOf(int label) {
        return left + label % columns * (width + gapAcross);
    }

    /** From the sheet's top edge to a label. */
    public double topOf(int label) {
        return top + Math.floorDiv(label, columns) * (height + gapDown);
    }

    /** Why it can't be printed on, all reasons at once, each a sentence; none if it can. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        if (columns < 1 || rows < 1 || columns > MOST || rows > MOST) {
            faults.add(
                    "Columns and rows of labels must be from 1 to " + MOST + ", not " + columns + " by " + rows + ".");
            return faults;
        }
        if (!(width >= LEAST_WIDTH && height >= LEAST_HEIGHT)) {
            faults.add("A label of " + mm(width) + " × " + mm(height)
                    + " mm is too small to be read; take one of at least " + mm(LEAST_WIDTH) + " × " + mm(LEAST_HEIGHT)
                    + " mm.");
        }
        if (!(gapAcross >= 0 && gapDown >= 0)) {
            faults.add("The gap between labels can't be less than 0 mm.");
        }
        Paper.Sheet sheet = paper.upright();
        addUnlessFits(faults, "across", columns, width, gapAcross, left, sheet.widthMm());
        addUnlessFits(faults, "from top to bottom", rows, height, gapDown, top, sheet.heightMm());
        return faults;
    }

    private void addUnlessFits(
            List<String> faults, String way, int labels, double size, double gap, double margin, double room) {
        double need = labels * size + (labels - 1) * gap;
        if (!(margin >= -NOTHING && margin + need <= room + NOTHING)) {
            faults.add(labels + " labels of " + mm(size) + " mm" + (gap > 0 ? " with gaps of " + mm(gap) + " mm" : "")
                    + (margin > 0 ? " behind a margin of " + mm(margin) + " mm" : "") + " need "
                    + mm(Math.max(0, margin) + need) + " mm " + way + ", and " + paper.word() + " has " + mm(room)
                    + " mm. Take fewer or smaller ones, or another paper.");
        }
    }

    /** A length as a person reads it, to a tenth. */
    static String mm(double length) {
        String written = String.format(Locale.ROOT, "%.1f", length);
        return written.endsWith(".0") ? written.substring(0, written.length() - 2) : written;
    }

    /** What it is, as a person reads it: in mm, and in inches where the paper is measured so. */
    public String says() {
        String inches = paper == Paper.LETTER
                ? String.format(Locale.ROOT, " (%.2f × %.2f in)", width / 25.4, height / 25.4)
                : "";
        return paper.word() + ", " + columns + " × " + rows + " labels of " + mm(width) + " × " + mm(height) + " mm"
                + inches;
    }
}
