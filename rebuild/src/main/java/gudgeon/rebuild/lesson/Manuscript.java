package gudgeon.rebuild.lesson;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * The text of an engine book, into which amendments are written where they belong: remarks, order and layout of all the rest stay as
 * they are, to the letter. Immutable.
 */
public final class Manuscript {
    private static final Comparator<Amendment> IN_ORDER = Comparator.comparing(
                    (Amendment one) -> String.join("\n", one.path()))
            .thenComparing(Amendment::value)
            .thenComparing(one -> one.getClass().getSimpleName());

    private final String text;
    private final Optional<Node> root;

    private Manuscript(String text) {
        this.text = text;
        this.root = new Compose(LoadSettings.builder().build()).composeString(text);
    }

    /**
     * The manuscript of a book.
     *
     * @param text a book that was read without a grave fault
     * @throws org.snakeyaml.engine.v2.exceptions.YamlEngineException for a text that is no YAML
     */
    public static Manuscript of(String text) {
        return new Manuscript(text);
    }

    /** The text. */
    public String text() {
        return text;
    }

    /** Whether the text has the place of an amendment: every block of its path that has an id. */
    public boolean hasPlaceFor(Amendment amendment) {
        return splice(amendment).isPresent();
    }

    /** What an amendment alone changes; nothing where the text has no place for it. */
    public Difference difference(Amendment amendment) {
        return splice(amendment)
                .map(splice -> Difference.of(text, splice))
                .orElseGet(() -> new Difference(1, List.of(), List.of()));
    }

    /**
     * The text with amendments written in. The order in which they are given makes no difference. One for which there is no place is
     * left out.
     *
     * @param amendments no two of one place, unless both add to a list
     */
    public Manuscript with(Collection<? extends Amendment> amendments) {
        Manuscript now = this;
        for (Amendment amendment :
                amendments.stream().sorted(IN_ORDER).distinct().toList()) {
            now = now.with(amendment);
        }
        return now;
    }

    private Manuscript with(Amendment amendment) {
        return splice(amendment).map(splice -> new Manuscript(splice.in(text))).orElse(this);
    }

    private Optional<Splice> splice(Amendment amendment) {
        return root.flatMap(top -> new Insertion(text).of(amendment, top));
    }
}
