package gudgeon.bench.cli;

import gudgeon.rebuild.alarm.Replay;
import gudgeon.rebuild.book.EngineBook;
import java.io.PrintWriter;
import java.nio.file.Path;
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
        Replay replay = Replay.of(read, Journals.entries(Objects.requireNonNull(journal)));
        if (json) {
            out.println(ReplayJson.text(replay));
        } else {
            ReplayText.print(replay, out);
        }
        return replay.standing().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }
}
