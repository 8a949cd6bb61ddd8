package gudgeon.rebuild.build;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Sourcing.WorkBack;
import java.util.LinkedHashMap;
import java.util.Map;

/** Which readings of a part count. */
public final class Countable {
    private Countable() {}

    /**
     * The readings of a dimension on one part that count, by the number of their entry: those since it came back from a machinist
     * last, since what was read before is of what it was.
     *
     * @param part the part entered for the dimension's position; empty for the one that came off
     */
    public static Map<Long, ReadingTaken> of(Build build, Dimension dimension, String part) {
        long since = since(build, dimension.of(), part);
        Map<Long, ReadingTaken> count = new LinkedHashMap<>();
        build.readings(dimension.id(), part).stream()
                .filter(told -> told.number() > since)
                .forEach(told -> count.put(told.number(), told.fact()));
        return count;
    }

    /** Number of the entry with which a part came back from a machinist last; 0 if it did not. */
    public static long since(Build build, String position, String part) {
        return build.told(WorkBack.class, position).stream()
                .filter(told -> told.fact().part().equals(part))
                .mapToLong(Told::number)
                .max()
                .orElse(0);
    }
}
