package gudgeon.rebuild.fasten;

import gudgeon.rebuild.sentence.Sentence;
import java.util.List;

/**
 * A kind that can be turned into holes where it does harm.
 *
 * @param kind name of the kind
 * @param verdict the harm
 * @param holes in which holes
 */
public record Danger(String kind, LengthVerdict verdict, List<String> holes) {
    public Danger {
        holes = List.copyOf(holes);
    }

    /** What must not be done, a sentence. */
    public String sentence() {
        return "Keep " + kind + " out of " + Sentence.list(holes) + ": " + verdict.words() + ".";
    }
}
