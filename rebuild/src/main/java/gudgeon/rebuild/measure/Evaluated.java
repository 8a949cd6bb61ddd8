package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Countable;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Figures;
import gudgeon.rebuild.reading.OwnInstruments;
import java.util.List;
import java.util.Map;

/**
 * What the readings of a dimension on a part come to, or what follows from those of others.
 *
 * @param dimension the dimension
 * @param part name of the part; empty for the one that came off
 * @param figures a value with its doubt for each place that was read, or what was worked out: of a clearance or a difference the
 *     least and the greatest that its places allow; none where nothing was read
 * @param missing how many of the places that it takes were not read yet
 * @param unread readings that do not count, each a sentence that says why
 */
public record Evaluated(Dimension dimension, String part, List<Figure> figures, int missing, List<String> unread) {
    public Evaluated {
        figures = List.copyOf(figures);
        unread = List.copyOf(unread);
    }

    /**
     * Of a dimension on one part. What follows from another position's dimension takes the part that counts there.
     *
     * @param part the part entered for the dimension's position; empty for the one that came off
     */
    public static Evaluated of(Build build, Dimension dimension, String part) {
        return dimension
                .derived()
                .map(derivation -> new Derived(build, dimension, part).evaluated(derivation))
                .orElseGet(() -> read(build, dimension, part));
    }

    /** Of a dimension on the part that counts for its position. */
    public static Evaluated of(Build build, Dimension dimension) {
        return of(build, dimension, partFor(build, dimension));
    }

    static String partFor(Build build, Dimension dimension) {
        return build.partFor(dimension.of()).map(Part::name).orElse("");
    }

    private static Evaluated read(Build build, Dimension dimension, String part) {
        Map<Long, ReadingTaken> taken = Countable.of(build, dimension, part);
        Figures found =
                taken.isEmpty() ? Figures.NONE : Figures.of(dimension, taken, OwnInstruments.of(build.instruments()));
        int wanted = dimension.places().all().size() * dimension.pieces();
        return new Evaluated(
                dimension,
                part,
                found.figures(),
                Math.max(0, wanted - found.figures().size()),
                found.unread());
    }

    /** Whether nothing was read that counts. */
    public boolean isEmpty() {
        return figures.isEmpty();
    }
}
