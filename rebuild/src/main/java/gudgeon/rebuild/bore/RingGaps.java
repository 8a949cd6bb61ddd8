package gudgeon.rebuild.bore;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Structure;
import java.util.List;

/** The dimensions of a book that are gaps of rings: those that are read and whose id begins with {@code ring-gap}. */
public final class RingGaps {
    private static final String RING_GAP = "ring-gap";

    private RingGaps() {}

    /** In the book's order. */
    public static List<Dimension> of(Structure structure) {
        return structure.dimensions().stream()
                .filter(dimension -> dimension.isRead() && dimension.id().startsWith(RING_GAP))
                .toList();
    }
}
