package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A piston to choose.
 *
 * @param id its name in the book
 * @param from where it came from
 * @param note the writer's note, may be empty
 * @param crown the crown's form
 * @param land diameter at the top land
 * @param compressionHeight gudgeon pin's axis to the reference plane, if stated
 * @param protrusion as in {@link CrankSizes#protrusion}, measured with this piston, if stated
 * @param groove the top ring groove, if stated
 * @param crownThickness metal under the reference plane, if stated
 * @param pockets its pockets
 */
public record PistonEntry(
        String id,
        From from,
        String note,
        CrownEntry crown,
        Size land,
        Optional<Size> compressionHeight,
        Optional<Size> protrusion,
        Optional<Groove> groove,
        Optional<Size> crownThickness,
        List<PocketEntry> pockets) {
    public PistonEntry {
        pockets = List.copyOf(pockets);
    }

    /** Where a part came from. */
    public enum From {
        ORIGINAL,
        PATTERN,
        USED,
        MADE
    }

    /**
     * The top ring groove.
     *
     * @param below height of its upper side below the reference plane
     * @param depth its depth from the land
     */
    public record Groove(Size below, Size depth) {
        Groove each(UnaryOperator<Size> change) {
            return new Groove(change.apply(below), change.apply(depth));
        }
    }

    /** The same piston with every size changed. */
    public PistonEntry each(UnaryOperator<Size> change) {
        return new PistonEntry(
                id,
                from,
                note,
                crown.each(change),
                change.apply(land),
                compressionHeight.map(change),
                protrusion.map(change),
                groove.map(g -> g.each(change)),
                crownThickness.map(change),
                pockets.stream().map(pocket -> pocket.each(change)).toList());
    }
}
