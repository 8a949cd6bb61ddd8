package gudgeon.bench.print.fasten;

import java.util.ArrayList;
import java.util.List;

/**
 * How a face is spread over sheets: windows of one size in columns and rows, each overlapping the next, the whole centred on the face.
 *
 * @param face the face, mm
 * @param width of a window, mm, above the overlap
 * @param height of a window, mm, above the overlap
 */
public record Tiling(Window face, double width, double height) {
    /** How far a window reaches over the next, mm: a circle up to this size is whole on one sheet at least. */
    public static final double OVERLAP_MM = 20;

    /** Where the sheets are laid on each other. */
    public record Mark(double x, double y, String name) {}

    /** How many stand side by side. */
    public int columns() {
        return count(face.width(), width);
    }

    /** How many stand above each other. */
    public int rows() {
        return count(face.height(), height);
    }

    /** How many sheets it takes, as a number that no drawing is too large for. */
    public long sheets() {
        return (long) columns() * rows();
    }

    private static int count(double length, double window) {
        return 1 + (int) Math.ceil(Math.max(0, length - window) / (window - OVERLAP_MM));
    }

    /** Its windows, row by row from the top, each from the left. */
    public List<Window> windows() {
        List<Window> windows = new ArrayList<>();
        for (int row = rows() - 1; row >= 0; row--) {
            for (int column = 0; column < columns(); column++) {
                windows.add(new Window(left(column), bottom(row), width, height));
            }
        }
        return windows;
    }

    /** Two marks in each strip that two sheets share, where both have them. */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                if (column > 0) {
                    double x = left(column) + OVERLAP_MM / 2;
                    mark(marks, x, bottom(row) + height / 4);
                    mark(marks, x, bottom(row) + 3 * height / 4);
                }
                if (row > 0) {
                    double y = bottom(row) + OVERLAP_MM / 2;
                    mark(marks, left(column) + width / 4, y);
                    mark(marks, left(column) + 3 * width / 4, y);
                }
            }
        }
        return marks;
    }

    private static void mark(List<Mark> marks, double x, double y) {
        marks.add(new Mark(x, y, name(marks.size())));
    }

    /** A, B, ... Z, AA, AB and so on. */
    private static String name(int number) {
        String last = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? last : name(number / 26 - 1) + last;
    }

    private double left(int column) {
        double whole = width + (columns() - 1) * (width - OVERLAP_MM);
        return face.left() + (face.width() - whole) / 2 + column * (width - OVERLAP_MM);
    }

    private double bottom(int row) {
        double whole = height + (rows() - 1) * (height - OVERLAP_MM);
        return face.bottom() + (face.height() - whole) / 2 + row * (height - OVERLAP_MM);
    }
}
