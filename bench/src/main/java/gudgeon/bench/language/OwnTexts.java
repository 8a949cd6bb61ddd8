package gudgeon.bench.language;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.EntryJson;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** What a build says in the words of people: the texts of its engine book and of its journal, which no translator may touch. */
public final class OwnTexts {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?;]) ");

    private final Set<String> texts = ConcurrentHashMap.newKeySet();
    private long seen;

    /** All of them so far; the set grows as more is taken in. */
    public Set<String> texts() {
        return texts;
    }

    /** How many entries have been taken in. */
    public long seen() {
        return seen;
    }

    /** Takes in the texts of an engine book, which has been read before. */
    public void book(String yaml) {
        new Compose(LoadSettings.builder().build()).composeString(yaml).ifPresent(this::values);
    }

    private void values(Node node) {
        if (node instanceof MappingNode block) {
            block.getValue().forEach(pair -> {
                if (pair.getKeyNode() instanceof ScalarNode key
                        && key.getValue().contains("-")) {
                    take(key.getValue());
                }
                values(pair.getValueNode());
            });
        } else if (node instanceof SequenceNode list) {
            list.getValue().forEach(this::values);
        } else if (node instanceof ScalarNode value) {
            take(value.getValue());
        }
    }

    /** Takes in a name, such as the build's own. */
    public void name(String name) {
        take(name);
    }

    /** Takes in what a build's entries say. */
    public synchronized void entries(List<Entry> entries) {
        for (Entry entry : entries.subList((int) Math.min(seen, entries.size()), entries.size())) {
            try {
                take(JSON.readTree(EntryJson.write(entry)));
            } catch (JsonProcessingException impossible) {
                throw new IllegalStateException("an entry was written that can't be read", impossible);
            }
        }
        seen = entries.size();
    }

    private void take(JsonNode node) {
        if (node.isTextual()) {
            take(node.textValue());
        } else {
            node.forEach(this::take);
        }
    }

    /** Takes in a text and each of its sentences, which the program may put among its own. */
    private void take(String text) {
        String whole = text.strip().replaceAll("\\s+", " ");
        one(whole);
        for (String sentence : SENTENCE_END.split(whole, -1)) {
            one(sentence.replaceFirst("[.;]$", ""));
        }
    }

    private void one(String core) {
        if (Letters.words(core).findAny().isPresent() && !Numbers.isMeasure(core)) {
            texts.add(core);
        }
    }
}
