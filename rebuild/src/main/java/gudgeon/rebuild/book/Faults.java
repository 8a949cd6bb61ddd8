package gudgeon.rebuild.book;

import gudgeon.rebuild.book.Fault.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is found wrong while a book is read. */
final class Faults {
    /** More than a person would read. */
    private static final int MOST = 200;

    private final List<Fault> found = new ArrayList<>();
    private int left;

    void fault(Where where, String path, String what, String expected) {
        add(where, path, what, expected, Severity.FAULT);
    }

    void doubt(Where where, String path, String what, String expected) {
        add(where, path, what, expected, Severity.DOUBT);
    }

    void note(Where where, String path, String what, String expected) {
        add(where, path, what, expected, Severity.NOTE);
    }

    /** A fault of the whole file. */
    void ofFile(String what, String expected) {
        found.add(new Fault(0, 0, "", what, expected, Severity.FAULT));
    }

    private void add(Where where, String path, String what, String expected, Severity severity) {
        if (found.size() < MOST) {
            found.add(new Fault(where.line(), where.column(), path, what, expected, severity));
        } else if (severity == Severity.FAULT) {
            left++;
        }
    }

    boolean grave() {
        return left > 0 || found.stream().anyMatch(fault -> fault.severity() == Severity.FAULT);
    }

    /** All in the order of the file. */
    List<Fault> inOrder() {
        List<Fault> all = new ArrayList<>(found);
        all.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
        if (left > 0) {
            all.add(new Fault(
                    0,
                    0,
                    "",
                    "And " + left + " more faults of this kind.",
                    "Put the ones above right first, then check the book again.",
                    Severity.FAULT));
        }
        return all;
    }
}
