package gudgeon.rebuild.decide;

import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.Optional;

/**
 * What an option does at one position, and whether that is in hand.
 *
 * @param line the line as told
 * @param name what a fitter calls the position
 * @param family name of the family's engine whose part it is, empty for none
 * @param inHand whether there is nothing to get: the part, or the work on it, is there
 * @param standing the same in words
 * @param fault why the price can't be added up, a sentence, if it can't
 */
public record OptionPart(
        OptionLine line, String name, String family, boolean inHand, String standing, Optional<String> fault) {
    /** What is done, bought and from where, as a person reads it. */
    public String words() {
        String what = line.what().isEmpty() ? name : name + ": " + line.what();
        String origin = line.origin().map(from -> ", " + from.words()).orElse("");
        return what + origin + (family.isEmpty() ? "" : ", from the " + family);
    }
}
