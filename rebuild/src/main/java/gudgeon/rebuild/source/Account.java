package gudgeon.rebuild.source;

import gudgeon.rebuild.sentence.Sentence;
import java.util.List;

/**
 * Money of a rebuild, each currency by itself. What is ordered counts as spent: parts of small makers are mostly paid beforehand.
 *
 * @param spent parts ordered or bought, postage, and machinists' work that is back, less what came back
 * @param toCome machinists' work that is out, and the cheapest offer of all that is still to be ordered
 * @param unpriced what is in neither because no price that can be read is known, names
 * @param faults prices that can't be read, each a sentence
 */
public record Account(Sum spent, Sum toCome, List<String> unpriced, List<String> faults) {
    public Account {
        unpriced = List.copyOf(unpriced);
        faults = List.copyOf(faults);
    }

    /** The same as a sentence. */
    public String sentence() {
        return "Spent: " + spent.words() + ". To come: " + toCome.words()
                + (unpriced.isEmpty() ? "." : ", and what is not known for " + Sentence.list(unpriced) + ".");
    }
}
