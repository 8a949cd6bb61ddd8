package gudgeon.store.drill;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.alarm.AlarmKind;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.drill.Expected;
import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Reads drills from their folders, each engine book once. */
public final class DrillReader {
    private static final String DESCRIPTION = "drill.yaml";
    private static final Set<String> KEYS = Set.of("mistake", "shown-by", "book", "expected", "vary", "fault", "sound");
    /** Those of a trial fit are for whoever tries the drill as one. */
    private static final Set<String> EXPECTED = Set.of("alarm", "at", "entry", "gap", "valves", "verdict");

    private final JsonMapper mapper = new JsonMapper();
    private final Map<Path, BookReading> books = new HashMap<>();

    /** Every folder at or below one that holds a drill, in the order of their names. */
    public static List<Path> folders(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(path -> path.endsWith(DESCRIPTION) && Files.isRegularFile(path))
                    .map(path -> path.toAbsolutePath().normalize().getParent())
                    .flatMap(Stream::ofNullable)
                    .sorted()
                    .toList();
        } catch (UncheckedIOException unreadable) {
            throw new IOException(unreadable.getMessage(), unreadable);
        }
    }

    /**
     * Reads one.
     *
     * @param root the folder of all drills, at or above it
     */
    public DrillReading read(Path root, Path folder) {
        Path full = root.toAbsolutePath().normalize();
        Path said = full.equals(folder) ? full.getFileName() : full.relativize(folder);
        String name = String.valueOf(said).replace('\\', '/');
        List<String> sentences = new ArrayList<>();
        Optional<Drill> drill = fields(folder, name, sentences).flatMap(fields -> drill(folder, name, fields));
        return drill.filter(read -> sentences.isEmpty())
                .<DrillReading>map(DrillReading.Read::new)
                .orElseGet(() -> new DrillReading.Refused(sentences));
    }

    private static Optional<DrillFields> fields(Path folder, String name, List<String> sentences) {
        String where = name + "/" + DESCRIPTION;
        return text(folder.resolve(DESCRIPTION), where, sentences).flatMap(text -> {
            try {
                Object all = new Load(LoadSettings.builder().build()).loadFromString(text);
                if (all instanceof Map<?, ?> map) {
                    return Optional.of(new DrillFields(map, where, sentences));
                }
                sentences.add(where + " says nothing that can be used. Write it as docs/drills.md shows.");
            } catch (YamlEngineException broken) {
                sentences.add(where + " is not YAML: " + broken.getMessage() + ". Mend it as docs/drills.md shows.");
            }
            return Optional.empty();
        });
    }

    private static Optional<String> text(Path file, String where, List<String> sentences) {
        try {
            return Optional.of(Files.readString(file));
        } catch (IOException unreadable) {
            sentences.add(where + " can't be read: " + unreadable.getMessage()
                    + ". A drill is a folder with drill.yaml, fault.jsonl and sound.jsonl.");
            return Optional.empty();
        }
    }

    private Optional<Drill> drill(Path folder, String name, DrillFields fields) {
        fields.known(KEYS);
        String mistake = fields.said("mistake");
        fields.said("shown-by");
        Expected expected = expected(fields.inside("expected"));
        Vary vary = VaryReader.vary(fields.inside("vary"));
        List<Line> fault = lines(folder, name, "fault.jsonl", fields.sentences());
        List<Line> sound = lines(folder, name, "sound.jsonl", fields.sentences());
        Optional<EngineBook> book = book(folder, fields.said("book"), fields);
        if (expected.due() > fault.size()) {
            fields.fault("'entry' is " + expected.due() + ", and fault.jsonl has " + fault.size() + " entries");
        }
        VaryReader.check(vary, fault, sound, fields);
        return book.map(read -> new Drill(name, mistake, read, expected, vary, fault, sound));
    }

    private static Expected expected(DrillFields fields) {
        fields.known(EXPECTED);
        String kind = fields.said("alarm");
        if (Arrays.stream(AlarmKind.values()).noneMatch(each -> each.key().equals(kind))) {
            fields.fault("'alarm' is '" + kind + "', which is no kind of alarm. docs/replay-json.md lists them");
        }
        return new Expected(kind, fields.said("at"), fields.whole("entry"));
    }

    private Optional<EngineBook> book(Path folder, String said, DrillFields fields) {
        Path file = folder.resolve(said).normalize();
        if (!books.containsKey(file)) {
            Optional<String> text = text(file, fields.where() + ": 'book' " + said, fields.sentences());
            if (text.isEmpty()) {
                return Optional.empty();
            }
            books.put(file, new EngineBookReader().read(text.get()));
        }
        BookReading reading = books.get(file);
        if (reading instanceof BookReading.Read read) {
            return Optional.of(read.book());
        }
        if (reading != null) {
            reading.faults().stream()
                    .map(Fault::sentence)
                    .forEach(sentence -> fields.sentences().add(fields.where() + ": 'book' " + said + ": " + sentence));
        }
        return Optional.empty();
    }

    /** The entries of a journal, each with its key, as it is written. */
    private List<Line> lines(Path folder, String name, String file, List<String> sentences) {
        String where = name + "/" + file;
        Optional<String> text = text(folder.resolve(file), where, sentences);
        if (text.isEmpty()) {
            return List.of();
        }
        Reading reading = JournalFile.read(text.get());
        if (reading instanceof Reading.Refused refused) {
            refused.sentences().forEach(sentence -> sentences.add(where + ": " + sentence));
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        List<String> written =
                text.get().lines().filter(line -> !line.isBlank()).toList();
        for (Entry entry : ((Reading.Read) reading).entries()) {
            ObjectNode json = object(written.get(lines.size()));
            lines.add(new Line(json.put("key", entry.key()), lines.size() + 1));
        }
        return lines;
    }

    private ObjectNode object(String line) {
        try {
            return (ObjectNode) mapper.readTree(line);
        } catch (IOException read) {
            throw new IllegalStateException("it was read before", read);
        }
    }
}
