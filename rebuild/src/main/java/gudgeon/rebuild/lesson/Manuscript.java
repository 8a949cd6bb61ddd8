package gudgeon.rebuild.lesson;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
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
        List<Amendment> left = amendments.stream().sorted(IN_ORDER).distinct().collect(Collectors.toList());
        for (NavigableMap<Integer, Splice> apart = now.takeApart(left); !apart.isEmpty(); apart = now.takeApart(left)) {
            now = now.spliced(apart);
        }
        return now;
    }

    /** Takes out of a list what can be written at once, since no two of it touch in the text; what they touch comes after. */
    private NavigableMap<Integer, Splice> takeApart(List<Amendment> left) {
        NavigableMap<Integer, Splice> apart = new TreeMap<>();
        left.removeIf(amendment -> splice(amendment)
                .filter(splice -> isFree(splice, apart))
                .map(splice -> {
                    apart.put(splice.from(), splice);
                    return true;
                })
                .orElse(false));
        return apart;
    }

    private static boolean isFree(Splice splice, NavigableMap<Integer, Splice> taken) {
        Map.Entry<Integer, Splice> before = taken.floorEntry(splice.from());
        Map.Entry<Integer, Splice> after = taken.ceilingEntry(splice.from());
        return (before == null || before.getValue().to() < splice.from())
                && (after == null || splice.to() < after.getKey());
    }

    private Manuscript spliced(NavigableMap<Integer, Splice> apart) {
        StringBuilder changed = new StringBuilder(text);
        apart.descendingMap().values().forEach(splice -> changed.replace(splice.from(), splice.to(), splice.put()));
        return new Manuscript(changed.toString());
    }

    private Optional<Splice> splice(Amendment amendment) {
        return root.flatMap(top -> new Insertion(text).of(amendment, top));
    }
}
