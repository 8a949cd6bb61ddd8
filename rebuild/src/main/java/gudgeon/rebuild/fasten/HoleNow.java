package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.Tightened;
import java.util.List;
import java.util.Optional;

/**
 * A hole as the build has it: the book's figures, what was measured laid over them, and what became of its fastener.
 *
 * @param book the hole as the book has it; with nothing but its id where only the map has it
 * @param at where it is, seen from outside
 * @param thread its thread, may be empty
 * @param stack what its fastener clamps, in mm
 * @param depth usable depth of its thread, in mm
 * @param into what its thread is cut in, may be empty
 * @param fastener the fastener that came out of it or was chosen for it, whichever was said last
 * @param tightened how it was tightened since its joint was last loose, in the order of the entries
 * @param marked whether its fastener was marked across since it was last tightened
 */
public record HoleNow(
        Hole book,
        Optional<Point> at,
        String thread,
        Optional<Quantity> stack,
        Optional<Quantity> depth,
        String into,
        Optional<ForHole> fastener,
        List<Told<Tightened>> tightened,
        boolean marked) {
    public HoleNow {
        tightened = List.copyOf(tightened);
    }

    /** Its name in the joint. */
    public String id() {
        return book.id();
    }

    /** The last pass that it has had since its joint was last loose; 0 for none. */
    public int pass() {
        return tightened.stream().mapToInt(told -> told.fact().pass()).max().orElse(0);
    }

    /** How far a fastener may stand through, in mm, where the book says. */
    public Optional<Quantity> room() {
        return book.room().map(size -> size.quantity());
    }

    /** The maker's length of its fastener under the head, in mm. */
    public Optional<Quantity> makersLength() {
        return book.length().map(size -> size.quantity());
    }
}
