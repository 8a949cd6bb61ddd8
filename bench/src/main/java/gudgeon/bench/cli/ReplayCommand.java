package gudgeon.bench.cli;

import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays a journal entry by entry. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = "Plays a journal over its engine book and prints each alarm at the entry that raised it.",
        footer = {"", "Exit codes: 0 no alarm stands at the end; 1 some stand; 2 unusable input."})
final class ReplayCommand implements Callable<Integer> {
    /** Some hundred thousand entries; a larger file is not a journal. */
    private static final long LARGEST_BYTES = 64L << 20;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BOOK", description = "the engine book, a .yaml file")
    private @Nullable Path book;

    @Parameters(index = "1", paramLabel = "JOURNAL", description = "the journal, a .jsonl file with one entry a line")
    private @Nullable Path journal;

    @Option(names = "--json", description = "everything as JSON, see docs/replay-json.md")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        EngineBook read = Books.usable(Objects.requireNonNull(book));
        Replay replay = Replay.of(read, entries(Objects.requireNonNull(journal)));
        if (json) {
            out.println(ReplayJson.text(replay));
        } else {
            ReplayText.print(replay, out);
        }
        return replay.standing().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private static List<Entry> entries(Path file) {
        Reading reading = JournalFile.read(text(file));
        if (reading instanceof Reading.Refused refused) {
            throw new Unusable(file + " can't be used:\n  " + String.join("\n  ", refused.sentences()));
        }
        return ((Reading.Read) reading).entries();
    }

    private static String text(Path file) {
        if (Files.isDirectory(file)) {
            throw new Unusable(file + " is a folder; name the journal itself, a .jsonl file.");
        }
        if (!Files.exists(file)) {
            throw new Unusable("There is no file " + file + "; check its name and folder.");
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Unusable(
                        file + " is larger than 64 MB, so it is no journal. Check that it is the right file.");
            }
            return Files.readString(file);
        } catch (CharacterCodingException notText) {
            throw new Unusable(file + " is not a text file in UTF-8. Check that it is the right file.");
        } catch (IOException unreadable) {
            throw new Unusable(file + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }
}
