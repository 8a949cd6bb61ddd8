package gudgeon.store.journal;

import gudgeon.rebuild.journal.Entry;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A journal as text, one entry a line (JSON Lines). Empty lines are passed over. In a file written by hand {@code key}, {@code at},
 * {@code device} and {@code seen} may be left out: the key is then the letter e and the line's number, the time a minute a line after
 * {@link #BEGINNING}, the device {@value #DEVICE}, and every entry before it was seen.
 */
public final class JournalFile {
    /** The time of line 0 of a file that says none. */
    public static final Instant BEGINNING = Instant.parse("2026-01-01T09:00:00Z");
    /** The device of a file that names none. */
    public static final String DEVICE = "bench";

    private JournalFile() {}

    /** Reads all of it, or says all that is wrong. */
    public static Reading read(String text) {
        List<Entry> entries = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        Map<String, Integer> lineOfKey = new HashMap<>();
        int number = 0;
        int filled = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            Header leftOut = new Header("e" + number, BEGINNING.plus(Duration.ofMinutes(number)), DEVICE, filled);
            filled++;
            Optional<Entry> entry = EntryJson.read(line, "Line " + number, Optional.of(leftOut), sentences);
            if (entry.isPresent()) {
                Integer first = lineOfKey.putIfAbsent(entry.get().key(), number);
                if (first != null) {
                    sentences.add("Line " + number + ": 'key' is " + entry.get().key() + ", as in line " + first
                            + ". Give each entry a key of its own.");
                }
                entries.add(entry.get());
            }
        }
        return sentences.isEmpty() ? new Reading.Read(entries) : new Reading.Refused(sentences);
    }

    /** Writes entries one a line, in full. */
    public static String write(List<Entry> entries) {
        return entries.stream().map(entry -> EntryJson.write(entry) + "\n").collect(Collectors.joining());
    }
}
