package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * A size of the engine that a fitter measures, or that follows from such.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param of the position whose part it is measured on
 * @param key the key by which the book's figures know it, such as {@code pockets.exhaust.depth}; empty where they do not
 * @param how where and how it is measured, may be empty
 * @param with the instrument wanted, may be empty
 * @param places where on the part it is measured
 * @param pieces on how many pieces alike it is measured, from 1
 * @param unit the unit that its readings are held in
 * @param usual what it can be in any sound engine of this kind, so that slips show; never a limit
 * @param standard the maker's range of a new part, if the book has it
 * @param expect its service limits, if the book has them
 * @param derived how it follows from other dimensions; empty for one that is read
 * @param inspect whether it is worth comparing on a part that arrives; in the book's order
 * @param note the writer's note, may be empty
 * @param where where it stands in the file
 */
public record Dimension(
        String id,
        String name,
        String of,
        String key,
        String how,
        String with,
        Places places,
        int pieces,
        Unit unit,
        Optional<Expect> usual,
        Optional<Expect> standard,
        Optional<Expect> expect,
        Optional<Derivation> derived,
        boolean inspect,
        String note,
        Where where) {

    /** Whether it is read with an instrument, and not worked out. */
    public boolean isRead() {
        return derived.isEmpty();
    }
}
