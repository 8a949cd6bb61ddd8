package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Expanded;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import gudgeon.mechanics.thread.UnknownFastener;
import gudgeon.rebuild.book.Hole;
import gudgeon.rebuild.book.Space;
import java.util.Optional;

/**
 * What decides the length of a screw in its hole.
 *
 * @param thread its thread
 * @param stack what it clamps, in mm
 * @param depth usable depth of the thread in the hole, in mm
 * @param into what the thread is cut in, in words; may be empty
 * @param through whether the hole goes right through
 * @param inside whether it opens into the engine
 * @param room how far a screw may stand through, in mm
 */
public record HoleSizes(
        ScrewThread thread,
        Optional<Quantity> stack,
        Optional<Quantity> depth,
        String into,
        boolean through,
        boolean inside,
        Optional<Quantity> room) {

    /** Those of a hole; empty where a nut goes there, or where its thread is not known. */
    public static Optional<HoleSizes> of(HoleNow hole) {
        if (hole.book().kind() != Hole.Kind.SCREW) {
            return Optional.empty();
        }
        return thread(hole.thread())
                .map(thread -> new HoleSizes(
                        thread,
                        hole.stack(),
                        hole.depth(),
                        hole.into(),
                        hole.book().through(),
                        hole.book()
                                .behind()
                                .filter(space -> space != Space.OUTSIDE)
                                .isPresent(),
                        hole.room()));
    }

    static Optional<ScrewThread> thread(String designation) {
        try {
            return Optional.of(ScrewThread.of(designation));
        } catch (UnknownFastener unknown) {
            return Optional.empty();
        }
    }

    /** Half the span that a quantity may lie in, 95 %. */
    static double half(Quantity quantity) {
        return quantity.doubts().isEmpty() ? 0 : Expanded.of(quantity).halfWidth();
    }
}
