package gudgeon.bench.web.entry;

import gudgeon.rebuild.measure.Slip;
import java.util.List;
import java.util.Map;

/**
 * A reading that is hard to believe, so that the person is asked before it is taken down.
 *
 * @param field name of the field that it was typed into
 * @param typed as it was typed, with its unit
 * @param slips what would explain it
 */
public record Question(String field, String typed, List<Slip> slips) {
    public Question {
        slips = List.copyOf(slips);
    }

    /** The field in which the answer is sent. */
    public String answer() {
        return "answer." + field;
    }

    /** What was perhaps meant, as it would be typed. */
    public List<String> meant() {
        return slips.stream().map(Slip::meant).filter(text -> !text.isEmpty()).toList();
    }

    /** The questions, each a sentence. */
    public List<String> sentences() {
        return slips.stream().map(Slip::sentence).toList();
    }

    /** The same for a page that keeps its entries until they can be sent. */
    Map<String, Object> json() {
        return Map.of("answer", answer(), "typed", typed, "meant", meant());
    }
}
