package gudgeon.rebuild.source;

import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Origin;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One position of an order.
 *
 * @param order name of the order, the person's own; may be empty
 * @param position the position
 * @param name what a fitter calls the position
 * @param part what the seller calls it, may be empty
 * @param origin where it comes from, if that is known
 * @param from who it is ordered from, may be empty
 * @param ordered how many were ordered; 0 for what came without having been ordered
 * @param came how many came
 * @param returned how many went back
 * @param written what one costs, as written; may be empty
 * @param on the day it was ordered on
 * @param days how long it is on its way from that day, if that is known
 * @param promised the day it was promised for, if one was
 * @param sizes sizes as ordered, by the id of the book's dimension
 * @param state how it stands
 * @param entries numbers of the entries that tell it, in order
 * @param sentence how it stands, as a sentence
 */
public record OrderLine(
        String order,
        String position,
        String name,
        String part,
        Optional<Origin> origin,
        String from,
        int ordered,
        int came,
        int returned,
        String written,
        LocalDate on,
        Optional<Days> days,
        Optional<LocalDate> promised,
        Map<String, String> sizes,
        State state,
        List<Long> entries,
        String sentence) {
    public OrderLine {
        sizes = Map.copyOf(sizes);
        entries = List.copyOf(entries);
    }

    /** How a position of an order stands. */
    public enum State {
        /** As many came as were ordered. */
        COME("all came"),
        ON_ITS_WAY("on its way"),
        /** Nothing came, and it should have. */
        LATE("late"),
        /** Some came, and not all. */
        SHORT("short"),
        TOO_MANY("more than ordered"),
        NOT_ORDERED("not ordered");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** How many are still to come. */
    public int open() {
        return Math.max(0, ordered - came);
    }

    /** The last day on which it should be there: the promised one, else the last that was reckoned with. */
    public Optional<LocalDate> due() {
        return promised.or(() -> days.map(span -> on.plusDays(span.most())));
    }
}
