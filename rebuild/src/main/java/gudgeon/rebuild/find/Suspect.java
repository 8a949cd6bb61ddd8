package gudgeon.rebuild.find;

import gudgeon.rebuild.fit.Working;
import java.util.List;
import java.util.Optional;

/**
 * What may be the cause of a trouble.
 *
 * @param id its stable name, which the journal keeps
 * @param name what a fitter calls it
 * @param odds how likely it is before anything was seen, against the other suspects' odds; 0 or more, finite
 * @param basis where the odds come from, a sentence
 * @param reach ids of positions, steps or checks of the book to be got at to put it right, the nearest first; may be empty
 * @param shows how it shows on this engine, a sentence
 * @param working how that was worked out; empty where nothing is worked out
 */
public record Suspect(
        String id,
        String name,
        double odds,
        String basis,
        List<String> reach,
        String shows,
        Optional<Working> working) {
    public Suspect {
        reach = List.copyOf(reach);
        if (!(odds >= 0 && odds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("odds are 0 or more and finite, got " + odds + " for " + id);
        }
    }
}
