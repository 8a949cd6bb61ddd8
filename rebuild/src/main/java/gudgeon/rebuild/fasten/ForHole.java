package gudgeon.rebuild.fasten;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fastening.FastenerOut;
import gudgeon.rebuild.journal.Fastening.HoleGiven;
import java.util.Optional;

/**
 * The fastener that a person said belongs in a hole.
 *
 * @param entry number of the entry that says so
 * @param kind the person's name for its kind; empty where it only came out of the hole
 * @param thread its thread as written, may be empty
 * @param written its length as written, may be empty
 * @param length its length under the head, in mm, as far as that can be read
 * @param head what its head is like, may be empty
 * @param cameOut whether it came out of this hole at take-down; if not, it was chosen for it
 */
public record ForHole(
        long entry,
        String kind,
        String thread,
        String written,
        Optional<Quantity> length,
        String head,
        boolean cameOut) {
    static ForHole of(Told<FastenerOut> told) {
        FastenerOut out = told.fact();
        return new ForHole(told.number(), "", out.thread(), out.length(), millimetres(out.length()), out.head(), true);
    }

    static ForHole given(Told<HoleGiven> told) {
        HoleGiven given = told.fact();
        return new ForHole(
                told.number(),
                given.kind(),
                given.thread(),
                given.length(),
                millimetres(given.length()),
                given.head(),
                false);
    }

    private static Optional<Quantity> millimetres(String text) {
        return TypedSize.quantity(Unit.MM, text);
    }
}
