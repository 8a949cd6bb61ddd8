package gudgeon.rebuild.decide;

import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.Sum;
import java.util.List;

/**
 * What an option costs, as far as was said; each currency by itself.
 *
 * @param all all of it
 * @param toCome what is still to be spent: without what is in hand or ordered
 * @param unpriced names of what nobody said a price of that can be read
 */
public record Bill(Sum all, Sum toCome, List<String> unpriced) {
    public Bill {
        unpriced = List.copyOf(unpriced);
    }

    /** As a person reads it. */
    public String sentence() {
        String sum = all.isNothing() && !unpriced.isEmpty() ? "" : Sentence.capital(all.words());
        String still = toCome.equals(all) ? "" : ", of which " + toCome.words() + " still to come";
        String missing = unpriced.isEmpty()
                ? ""
                : (sum.isEmpty() ? "No price said for " : "; no price said for ") + Sentence.list(unpriced);
        return sum + still + missing + ".";
    }
}
