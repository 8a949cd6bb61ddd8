package gudgeon.rebuild.book;

import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import java.util.List;
import java.util.Optional;

/** Tells which figures of a joint's holes can hardly be right: each was most likely mistyped, and something would be worked out from it. */
final class HoleFaults {
    /** Two holes nearer than this can't both be there, mm. */
    private static final double NEAREST_MM = 1;

    private final Faults faults;
    private final List<Fields> entries;
    private final List<Hole> holes;

    /**
     * Those of a joint.
     *
     * @param entries its holes as they stand in the book
     * @param holes the same as they were read, in the same order
     */
    HoleFaults(Faults faults, List<Fields> entries, List<Hole> holes) {
        this.faults = faults;
        this.entries = entries;
        this.holes = holes;
    }

    void tell(List<Point> outline) {
        for (int i = 0; i < holes.size(); i++) {
            thread(entries.get(i), holes.get(i));
            reach(entries.get(i), holes.get(i));
            within(outline, entries.get(i), holes.get(i));
            onOneSpot(i);
        }
    }

    private void thread(Fields entry, Hole hole) {
        try {
            if (!hole.thread().isEmpty()) {
                ScrewThread.of(hole.thread());
            }
        } catch (UnknownFastener unknown) {
            faults.doubt(
                    entry.where("thread"),
                    entry.at("thread"),
                    unknown.sentence(),
                    "Look at the thread again; until it is known, neither length nor torque can be worked out for hole '"
                            + hole.id() + "'.");
        }
    }

    /** A stud's length is that of the stud, which does not begin at what it clamps. */
    private void reach(Fields entry, Hole hole) {
        Optional<Size> stack = hole.stack();
        if (hole.kind() == Hole.Kind.STUD || stack.isEmpty()) {
            return;
        }
        hole.length()
                .filter(length -> length.value() <= stack.get().value())
                .ifPresent(length -> faults.doubt(
                        entry.where("length"),
                        entry.at("length"),
                        "The fastener of hole '" + hole.id() + "' is " + Words.number(length.value())
                                + " mm long and clamps "
                                + Words.number(stack.get().value())
                                + " mm, so it does not reach its thread.",
                        "Measure 'length' under the head, and 'stack' over all that is clamped."));
    }

    /** A hole needs metal around it: its middle lies within the outline by half its thread at least. */
    private void within(List<Point> outline, Fields entry, Hole hole) {
        if (outline.size() < 3) {
            return;
        }
        Outline face = new Outline(outline);
        double half = halfMm(hole.thread());
        hole.at()
                .filter(at -> face.insideMm(at) < half)
                .ifPresent(at -> faults.doubt(
                        entry.where("at"),
                        entry.at("at"),
                        "Hole '" + hole.id() + "' lies " + (face.insideMm(at) < 0 ? "outside" : "on the edge of")
                                + " the joint's outline.",
                        "Look at its place and at the outline; both are in mm from one corner, seen from outside."));
    }

    private void onOneSpot(int which) {
        Hole hole = holes.get(which);
        holes.subList(0, which).stream()
                .filter(other -> other.at().isPresent() && hole.at().isPresent())
                .filter(other -> apartMm(other.at().get(), hole.at().get()) < NEAREST_MM)
                .findFirst()
                .ifPresent(other -> faults.doubt(
                        entries.get(which).where("at"),
                        entries.get(which).at("at"),
                        "Holes '" + other.id() + "' and '" + hole.id() + "' lie on one spot.",
                        "Put the place of one of them right."));
    }

    private static double apartMm(Point one, Point other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    private static double halfMm(String thread) {
        try {
            return ScrewThread.of(thread).majorMm() / 2;
        } catch (UnknownFastener unknown) {
            return 0;
        }
    }
}
