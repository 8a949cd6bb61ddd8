package gudgeon.store.device;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.store.disk.OwnerOnly;
import gudgeon.store.shelf.ShelfFault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The file that lists the devices. Only its owner may read it. */
record DevicesFile(Path path) {
    private static final JsonMapper MAPPER = new JsonMapper();

    List<LetIn> read() {
        if (!Files.exists(path)) {
            return List.of();
        }
        try {
            JsonNode json = MAPPER.readTree(Files.readString(path));
            List<LetIn> devices = new ArrayList<>();
            for (JsonNode one : json.required("devices")) {
                devices.add(new LetIn(
                        one.required("id").asText(),
                        one.required("name").asText(),
                        one.required("token-sha256").asText(),
                        Instant.parse(one.required("since").asText()),
                        Instant.parse(one.required("last-seen").asText())));
            }
            return devices;
        } catch (IOException | IllegalArgumentException | DateTimeException damaged) {
            throw new ShelfFault(
                    "The list of devices that are let in, " + path + ", can't be read. Remove it, start again, and let"
                            + " the devices in anew; builds are not touched by that.",
                    damaged);
        }
    }

    void write(List<LetIn> devices) {
        ObjectNode json = MAPPER.createObjectNode();
        ArrayNode list = json.putArray("devices");
        for (LetIn device : devices) {
            list.addObject()
                    .put("id", device.id())
                    .put("name", device.name())
                    .put("token-sha256", device.tokenHash())
                    .put("since", device.since().toString())
                    .put("last-seen", device.lastSeen().toString());
        }
        try {
            OwnerOnly.write(path, (json.toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException full) {
            throw Devices.fault("written", path, full);
        }
    }
}
