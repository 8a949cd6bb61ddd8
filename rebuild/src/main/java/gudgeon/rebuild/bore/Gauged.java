package gudgeon.rebuild.bore;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a dimension was found to be at one place of one piece, since its part last came back from a machinist: what was read before
 * tells of a part that is no more.
 *
 * @param at the place, as the book names it; empty where there is one only
 * @param piece which of several alike, from 1
 * @param size in the dimension's unit, with the doubts of scatter and instrument; of an instrument not named none is known
 * @param number number of the entry that told it last
 */
public record Gauged(String at, int piece, Quantity size, long number) {
    /** Every place that was read, repeats at one place averaged, in the order in which each was read first. */
    public static List<Gauged> all(Build build, Dimension dimension, String part) {
        return of(build, dimension, part, readings -> readings);
    }

    /** The same with only the last reading at each place: for what is filed, shimmed or set until it is right. */
    public static List<Gauged> last(Build build, Dimension dimension, String part) {
        return of(build, dimension, part, readings -> readings.subList(readings.size() - 1, readings.size()));
    }

    /** What was found on the part that counts for the dimension's position, as {@link #all}. */
    public static List<Gauged> onPartFor(Build build, Dimension dimension) {
        return build.partFor(dimension.of())
                .map(part -> all(build, dimension, part.name()))
                .orElse(List.of());
    }

    /** Number of the entry with which a part came back from a machinist last; 0 if it did not. */
    public static long reworked(Build build, String position, String part) {
        return build.told(WorkBack.class, position).stream()
                .filter(told -> told.fact().part().equals(part))
                .mapToLong(Told::number)
                .max()
                .orElse(0);
    }

    private interface Which {
        List<Told<ReadingTaken>> of(List<Told<ReadingTaken>> readings);
    }

    private record Place(String at, int piece) {}

    private static List<Gauged> of(Build build, Dimension dimension, String part, Which which) {
        long since = reworked(build, dimension.of(), part);
        Map<Place, List<Told<ReadingTaken>>> places = new LinkedHashMap<>();
        for (Told<ReadingTaken> told : build.readings(dimension.id(), part)) {
            if (told.number() > since
                    && value(told.fact().value(), dimension.unit()).isPresent()) {
                Place place = new Place(told.fact().at(), told.fact().piece());
                places.computeIfAbsent(place, key -> new ArrayList<>()).add(told);
            }
        }
        List<Gauged> all = new ArrayList<>();
        places.forEach((place, told) -> {
            List<Told<ReadingTaken>> counted = which.of(told);
            Told<ReadingTaken> last = counted.get(counted.size() - 1);
            all.add(new Gauged(place.at(), place.piece(), size(build, dimension.unit(), counted), last.number()));
        });
        return all;
    }

    private static Quantity size(Build build, Unit unit, List<Told<ReadingTaken>> readings) {
        double[] values = readings.stream()
                .mapToDouble(told -> value(told.fact().value(), unit).orElse(Double.NaN))
                .toArray();
        Quantity mean = values.length > 1 ? Quantity.meanOf(values) : Quantity.exact(values[0]);
        return instrument(build, readings.get(readings.size() - 1).fact().instrument())
                .map(kept -> mean.with(doubts(kept)))
                .orElse(mean);
    }

    private static Optional<InstrumentKept> instrument(Build build, String name) {
        return build.instruments().stream()
                .filter(kept -> kept.instrument().equals(name))
                .findFirst();
    }

    private static Doubt[] doubts(InstrumentKept kept) {
        double step = Math.abs(value(kept.resolution(), Unit.MM).orElse(0));
        double error = Math.abs(value(kept.error(), Unit.MM).orElse(0));
        return new Doubt[] {Doubt.resolution(step), Doubt.permissibleError(error)};
    }

    /** A size as written, in a unit; empty where it can't be read. */
    public static OptionalDouble value(String written, Unit unit) {
        return TypedSize.of(unit, written, 1) instanceof TypedSize.Read read
                ? OptionalDouble.of(read.value())
                : OptionalDouble.empty();
    }
}
