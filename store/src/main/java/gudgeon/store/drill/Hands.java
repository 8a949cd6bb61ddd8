package gudgeon.store.drill;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Which device tells an entry, when, and what it had seen by then. */
final class Hands {
    private static final List<String> DEVICES = List.of("tablet", "phone", "laptop in the shed");
    private static final Instant BEGINNING = Instant.parse("2026-02-27T17:40:00Z");
    private static final int MOST_MINUTES = 600;

    private Hands() {}

    /** Gives every entry a key, a device, a time and what was seen, unless the drill says them. */
    static List<Line> given(List<Line> lines, Random chance) {
        int devices = 1 + chance.nextInt(DEVICES.size());
        boolean timed = lines.stream().anyMatch(line -> line.json().has("at"));
        Instant at = BEGINNING;
        List<Line> given = new ArrayList<>();
        for (Line line : lines) {
            ObjectNode json = line.json();
            at = at.plus(Duration.ofMinutes(1L + chance.nextInt(MOST_MINUTES)));
            if (!timed) {
                json.put("at", at.toString());
            }
            if (!json.has("device")) {
                json.put("device", DEVICES.get(chance.nextInt(devices)));
            }
            json.put("seen", json.has("seen") ? seen(lines, json.path("seen").asInt()) : given.size());
            given.add(line);
        }
        return given;
    }

    /** Number of the last of the entries that were the first so many of the drill. */
    private static int seen(List<Line> lines, int written) {
        int last = 0;
        for (int i = 0; i < lines.size(); i++) {
            int number = lines.get(i).number();
            last = number > 0 && number <= written ? i + 1 : last;
        }
        return last;
    }
}
