package gudgeon.store.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An entry as one line of JSON: {@code type} and {@code version} of its fact, {@code key}, {@code at}, {@code device}, {@code seen},
 * and the fact's own fields. What is not known is refused, never skipped: a journal that is half understood would tell another
 * rebuild.
 */
public final class EntryJson {
    /** Longest line, in characters. */
    public static final int LONGEST = 200_000;

    private static final int DEEPEST = 20;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private EntryJson() {}

    /** One line, without its end. */
    public static String write(Entry entry) {
        ObjectNode fact = MAPPER.createObjectNode();
        FactJson.write(entry.fact(), fact);
        ObjectNode line = MAPPER.createObjectNode();
        line.set("type", fact.remove("type"));
        line.set("version", fact.remove("version"));
        line.put("key", entry.key())
                .put("at", entry.at().toString())
                .put("device", entry.device())
                .put("seen", entry.seen());
        line.setAll(fact);
        return line.toString();
    }

    /** Why a fact could not be read back from a journal, each a sentence; none if it could. */
    public static List<String> against(Fact fact) {
        Entry entry = new Entry("e", Instant.EPOCH, "bench", 0, fact);
        return read(write(entry)) instanceof Reading.Refused refused ? refused.sentences() : List.of();
    }

    /** Reads one entry; what was read is a list of one. */
    public static Reading read(String text) {
        List<String> sentences = new ArrayList<>();
        Optional<Entry> entry = read(text, "Entry", Optional.empty(), sentences);
        return entry.<Reading>map(read -> new Reading.Read(List.of(read)))
                .orElseGet(() -> new Reading.Refused(sentences));
    }

    /**
     * Reads one entry.
     *
     * @param where what the sentences call it
     * @param leftOut what counts where the line leaves it out; empty if nothing may be left out
     * @param sentences takes what is wrong
     * @return empty if anything is wrong
     */
    static Optional<Entry> read(String text, String where, Optional<Header> leftOut, List<String> sentences) {
        int before = sentences.size();
        return parsed(text, where, sentences)
                .flatMap(object -> entry(new JsonFields(object, where, sentences), leftOut))
                .filter(entry -> sentences.size() == before);
    }

    private static Optional<ObjectNode> parsed(String text, String where, List<String> sentences) {
        if (text.length() > LONGEST) {
            sentences.add(where + " has " + text.length() + " characters, too many for an entry. Keep it to " + LONGEST
                    + "; a photo is kept as a file.");
            return Optional.empty();
        }
        try {
            JsonNode node = MAPPER.readTree(text);
            if (node instanceof ObjectNode object) {
                return Optional.of(object);
            }
            sentences.add(where + " is no JSON object. Write one entry as {\"type\": ..., \"version\": 1, ...}.");
        } catch (JsonProcessingException broken) {
            sentences.add(where + " is not JSON: " + reason(broken) + ". Mend it or take it out.");
        }
        return Optional.empty();
    }

    private static String reason(JsonProcessingException broken) {
        String first = broken.getOriginalMessage().lines().findFirst().orElse("it breaks off");
        return JsonFields.shown(first)
                + (broken.getLocation() == null
                        ? ""
                        : ", at column " + broken.getLocation().getColumnNr());
    }

    private static Optional<Entry> entry(JsonFields fields, Optional<Header> leftOut) {
        int before = fields.sentences().size();
        String key =
                leftOut.filter(header -> !fields.has("key")).map(Header::key).orElseGet(() -> fields.key("key"));
        var at = leftOut.filter(header -> !fields.has("at")).map(Header::at).orElseGet(() -> fields.instant("at"));
        String device = leftOut.filter(header -> !fields.has("device"))
                .map(Header::device)
                .orElseGet(() -> fields.said("device"));
        long seen = leftOut.filter(header -> !fields.has("seen"))
                .map(Header::seen)
                .orElseGet(() -> fields.whole("seen", 0, Integer.MAX_VALUE));
        Optional<Fact> fact = FactJson.read(fields);
        return fields.sentences().size() == before
                ? fact.map(known -> new Entry(key, at, device, seen, known))
                : Optional.empty();
    }
}
