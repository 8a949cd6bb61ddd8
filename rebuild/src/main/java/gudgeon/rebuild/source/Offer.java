package gudgeon.rebuild.source;

import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.journal.Origin;
import java.util.Map;
import java.util.Optional;

/**
 * What someone offers for a position; of two offers of one seller for one part the later.
 *
 * @param entry number of the entry that tells it
 * @param position the position
 * @param name what a fitter calls the position
 * @param part what the seller calls it, may be empty
 * @param origin where it comes from, if that is known
 * @param from who offers it, may be empty
 * @param written what one costs, as written; may be empty
 * @param price the same, if it can be read
 * @param days how long it would take to come, if that was said
 * @param sizes sizes as offered, by the id of the book's dimension
 */
public record Offer(
        long entry,
        String position,
        String name,
        String part,
        Optional<Origin> origin,
        String from,
        String written,
        Optional<Money> price,
        Optional<Days> days,
        Map<String, String> sizes) {
    public Offer {
        sizes = Map.copyOf(sizes);
    }
}
