package gudgeon.rebuild.bore;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Countable;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.reading.Figure;
import gudgeon.rebuild.reading.Figures;
import gudgeon.rebuild.reading.OwnInstruments;
import gudgeon.rebuild.reading.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BinaryOperator;

/**
 * What a dimension was found to be at one place of one piece, since its part last came back from a machinist: what was read before
 * tells of a part that is no more.
 *
 * @param at the place, as the book names it; empty where there is one only
 * @param piece which of several alike, from 1
 * @param size in the dimension's unit, with its doubts
 * @param doubtKnown whether it was said what it was read with; if not, the doubt is guessed
 * @param number number of the entry that told it last
 */
public record Gauged(String at, int piece, Quantity size, boolean doubtKnown, long number) {
    /** Doubt either way, in the dimension's unit, of a reading with nobody knows what: common practice, no source. */
    static final double UNKNOWN = 0.02;

    private static Gauged of(Figure figure) {
        Quantity size =
                figure.doubtKnown() ? figure.quantity() : figure.quantity().with(Doubt.stated(UNKNOWN));
        long number = figure.readings().stream().mapToLong(Reading::entry).max().orElse(0);
        return new Gauged(figure.at(), figure.piece(), size, figure.doubtKnown(), number);
    }

    /** Every place that was read on a part, repeats at one place averaged. */
    public static List<Gauged> all(Build build, Dimension dimension, String part) {
        return figures(build, dimension, Countable.of(build, dimension, part));
    }

    /** Every place that was read on the part that counts for the dimension's position. */
    public static List<Gauged> all(Build build, Dimension dimension) {
        return all(build, dimension, part(build, dimension.of()));
    }

    /**
     * Every place on the part that counts, with only the last reading at each: for what is filed, shimmed or set until it is right.
     */
    public static List<Gauged> last(Build build, Dimension dimension) {
        return one(build, dimension, (earlier, later) -> later);
    }

    /** The same with only the first. */
    public static List<Gauged> first(Build build, Dimension dimension) {
        return one(build, dimension, (earlier, later) -> earlier);
    }

    private static List<Gauged> one(Build build, Dimension dimension, BinaryOperator<Long> which) {
        Map<Long, ReadingTaken> count = Countable.of(build, dimension, part(build, dimension.of()));
        Map<String, Long> places = new LinkedHashMap<>();
        count.forEach((number, fact) -> places.merge(fact.piece() + " " + fact.at(), number, which));
        Map<Long, ReadingTaken> taken = new LinkedHashMap<>(count);
        taken.keySet().retainAll(places.values());
        return figures(build, dimension, taken);
    }

    private static List<Gauged> figures(Build build, Dimension dimension, Map<Long, ReadingTaken> taken) {
        return Figures.of(dimension, taken, OwnInstruments.of(build.instruments())).figures().stream()
                .map(Gauged::of)
                .toList();
    }

    /** Name of the part that counts for a position; empty for the one that came off. */
    public static String part(Build build, String position) {
        return build.partFor(position).map(Part::name).orElse("");
    }

    /** A size as written, in a unit; empty where it can't be read. */
    static OptionalDouble value(String written, Unit unit) {
        return TypedSize.of(unit, written, 1) instanceof TypedSize.Read read
                ? OptionalDouble.of(read.value())
                : OptionalDouble.empty();
    }
}
