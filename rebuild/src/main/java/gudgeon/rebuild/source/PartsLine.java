package gudgeon.rebuild.source;

import java.util.List;
import java.util.Optional;

/**
 * A position for which something is bought.
 *
 * @param position the position
 * @param name what a fitter calls it
 * @param want why something has to be bought; empty for what was ordered without need, or is in place already
 * @param needed how many are needed; 0 where none is
 * @param ordered how many are on their way
 * @param inHand how many came, were not refused, and are not fitted yet
 * @param toOrder how many have still to be ordered
 * @param offers what was offered, in the order told
 */
public record PartsLine(
        String position,
        String name,
        Optional<Want> want,
        int needed,
        int ordered,
        int inHand,
        int toOrder,
        List<Offer> offers) {
    public PartsLine {
        offers = List.copyOf(offers);
    }

    /** Why, and how it stands, as a sentence. */
    public String sentence() {
        String why = want.map(Want::sentence).orElse("Nothing calls for it now.");
        if (needed == 0) {
            return why;
        }
        return why + " Needed " + needed + ", in hand " + inHand + ", on the way " + ordered
                + (toOrder > 0 ? ", to order " + toOrder + "." : ".");
    }
}
