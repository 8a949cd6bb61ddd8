package gudgeon.rebuild.find;

import java.util.Map;

/**
 * What may come of a test.
 *
 * @param id its stable name, which the journal keeps
 * @param words what a fitter calls it
 * @param chances how likely it comes, from 0 to 1, by the id of the suspect that is the cause; one that is left out makes every
 *     answer of the test as likely as every other
 */
public record Answer(String id, String words, Map<String, Double> chances) {
    public Answer {
        chances = Map.copyOf(chances);
    }
}
