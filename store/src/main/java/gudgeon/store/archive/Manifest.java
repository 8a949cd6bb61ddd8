package gudgeon.store.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import gudgeon.store.shelf.BuildId;
import java.util.Optional;

/**
 * The file that says what an archive holds.
 *
 * @param id the build's id
 * @param name what the person calls the build
 * @param entries how many entries its journal has
 * @param head the hash at the end of the journal's chain
 * @param photos how many photos there are
 */
record Manifest(String id, String name, long entries, String head, int photos) {
    /** The version of archives that is written, and the only one there is. */
    static final int VERSION = 1;

    private static final int LONGEST_NAME = 4000;
    private static final JsonMapper MAPPER = new JsonMapper();

    String json() {
        return MAPPER.createObjectNode()
                        .put("archive", VERSION)
                        .put("id", id)
                        .put("name", name)
                        .put("entries", entries)
                        .put("head", head)
                        .put("photos", photos)
                        .toPrettyString()
                + "\n";
    }

    /** Empty if the text is not one that {@link #json} could have written. */
    static Optional<Manifest> of(String text) {
        try {
            JsonNode json = MAPPER.readTree(text);
            Manifest read = new Manifest(
                    json.path("id").asText(),
                    json.path("name").asText(),
                    json.path("entries").asLong(),
                    json.path("head").asText(),
                    json.path("photos").asInt());
            boolean plausible = json.path("archive").asInt() == VERSION
                    && BuildId.isOne(read.id)
                    && read.name.length() <= LONGEST_NAME
                    && read.entries >= 1
                    && read.head.matches("[0-9a-f]{64}");
            return plausible ? Optional.of(read) : Optional.empty();
        } catch (JsonProcessingException broken) {
            return Optional.empty();
        }
    }
}
