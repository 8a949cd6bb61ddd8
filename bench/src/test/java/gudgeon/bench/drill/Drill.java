package gudgeon.bench.drill;

import gudgeon.rebuild.alarm.Alarm;
import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * A mistake as data: a folder of {@code examples/drill} with a journal in which it is made and one in which it is not.
 *
 * @param folder the folder
 * @param mistake what was done wrong
 * @param book the engine book
 * @param kind key of the kind of alarm that must come
 * @param at where it must stand
 * @param due number of the entry at which it must stand at the latest
 */
public record Drill(Path folder, String mistake, EngineBook book, String kind, String at, long due) {
    /** What became of the mistake. */
    public enum Outcome {
        CAUGHT,
        LATE,
        MISSED
    }

    /** Books that several drills are of. */
    private static final Map<Path, EngineBook> BOOKS = new HashMap<>();

    private static EngineBook book(Path file) {
        return BOOKS.computeIfAbsent(
                file.normalize(), path -> ((BookReading.Read) new EngineBookReader().read(text(path))).book());
    }

    /** The drill in a folder. */
    public static Drill of(Path folder) {
        Map<?, ?> drill =
                (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text(folder.resolve("drill.yaml")));
        Map<?, ?> expected = (Map<?, ?>) said(drill, "expected");
        return new Drill(
                folder,
                said(drill, "mistake").toString(),
                book(folder.resolve(said(drill, "book").toString())),
                said(expected, "alarm").toString(),
                said(expected, "at").toString(),
                ((Number) said(expected, "entry")).longValue());
    }

    private static Object said(Map<?, ?> of, String key) {
        Object value = of.get(key);
        if (value == null) {
            throw new AssertionError("a drill.yaml without '" + key + "'");
        }
        return value;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Plays one of its journals. */
    public Replay replay(String journal) {
        Reading reading = JournalFile.read(text(folder.resolve(journal)));
        if (reading instanceof Reading.Refused refused) {
            throw new AssertionError(folder + "/" + journal + ": " + refused.sentences());
        }
        List<Entry> entries = ((Reading.Read) reading).entries();
        return Replay.of(book, entries);
    }

    /** What became of the mistake in a replay: caught if the alarm stands when its time is up, late if it comes after. */
    public Outcome judged(Replay replay) {
        boolean standing = false;
        boolean after = false;
        for (Replay.Turn turn : replay.turns()) {
            boolean raised = turn.raised().stream().anyMatch(this::isExpected);
            if (turn.number() <= due) {
                standing = raised || (standing && turn.gone().stream().noneMatch(this::isExpected));
            } else {
                after |= raised;
            }
        }
        return standing ? Outcome.CAUGHT : after ? Outcome.LATE : Outcome.MISSED;
    }

    private boolean isExpected(Alarm alarm) {
        return alarm.kind().key().equals(kind) && alarm.at().equals(at);
    }

    @Override
    public String toString() {
        return folder.getFileName() + ": " + mistake;
    }
}
