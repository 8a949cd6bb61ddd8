package gudgeon.bench.web.entry;

import gudgeon.rebuild.measure.Slips;
import gudgeon.rebuild.sentence.Sentence;
import java.util.Optional;

/**
 * What the person said when asked whether a reading was a slip.
 *
 * @param again whether it will be read again, so that what was typed is left out
 * @param value what was meant, if not what was typed
 * @param remark what the journal keeps of the answer; empty where nothing was asked
 */
record SlipAnswer(boolean again, Optional<String> value, String remark) {
    /** The answer to the question about a field: it stands, it is read again, or the value that was meant. */
    static SlipAnswer of(Form form, String field) {
        String answer = form.text("answer." + field);
        return switch (answer) {
            case "" -> new SlipAnswer(false, Optional.empty(), "");
            case "stands" -> new SlipAnswer(false, Optional.empty(), Sentence.of(Slips.STANDS));
            case "again" -> new SlipAnswer(true, Optional.empty(), "");
            default ->
                new SlipAnswer(
                        false, Optional.of(answer), "Asked: typed as " + form.text(field) + ", meant " + answer + ".");
        };
    }
}
