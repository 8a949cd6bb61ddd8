package gudgeon.bench.cli;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.lesson.DrillDraft;
import gudgeon.store.journal.EntryJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a drill of a mistake that a build went through. */
@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description =
                "Writes a folder with a mistake of a build and its twin without it, as docs/drills.md describes. Its remarks are"
                        + " told as written: read them before you hand it on.")
final class DrillCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] FOLDER",
            arity = "1..2",
            description = "a build on the shelf, unless --book names one; the folder to write, which must not be there")
    private List<String> words = List.of();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Option(names = "--shown", paramLabel = "ENTRY", required = true, description = "the entry at which it showed")
    private long shown;

    @Option(
            names = "--mistake",
            paramLabel = "ENTRY",
            required = true,
            split = ",",
            description = "the entries that were the mistake, with commas between them")
    private List<Long> mistakes = List.of();

    @Option(names = "--says", paramLabel = "TEXT", required = true, description = "what the mistake was, a sentence")
    private String says = "";

    @Override
    public Integer call() {
        PrintedBuild named = PrintedBuild.of(asked, words, 0, "a build and a folder");
        DrillDraft draft = DrillDraft.of(named.build(), shown, mistakes);
        if (draft instanceof DrillDraft.Refused refused) {
            throw new Unusable(String.join("\n", refused.sentences()));
        }
        DrillDraft.Drafted drafted = (DrillDraft.Drafted) draft;
        String book = asked.bookText(words.size() == 2 ? Optional.of(words.get(0)) : Optional.empty());
        write(named.file(), drafted, book);
        Objects.requireNonNull(spec)
                .commandLine()
                .getOut()
                .println(named.file() + " holds the drill. It waits for: "
                        + drafted.alarm().what());
        return Gudgeon.CLEAR;
    }

    private void write(Path folder, DrillDraft.Drafted drafted, String book) {
        try {
            Files.createDirectory(folder);
            Files.writeString(folder.resolve("book.yaml"), book);
            Files.writeString(folder.resolve("fault.jsonl"), lines(drafted.fault()));
            Files.writeString(folder.resolve("sound.jsonl"), lines(drafted.sound()));
            Files.writeString(
                    folder.resolve("drill.yaml"),
                    "mistake: " + quoted(says) + "\nshown-by: " + quoted(drafted.shown())
                            + "\nbook: book.yaml\nexpected: {alarm: "
                            + drafted.alarm().kind().key() + ", at: "
                            + quoted(drafted.alarm().at()) + ", entry: "
                            + drafted.fault().size() + "}\n",
                    StandardCharsets.UTF_8);
        } catch (FileAlreadyExistsException there) {
            throw new Unusable(folder + " is there already; name another folder, or remove it first.");
        } catch (IOException unwritable) {
            throw new Unusable(
                    folder + " can't be written: " + unwritable.getMessage() + ". Check that its parent is there.");
        }
    }

    private static String lines(List<Entry> entries) {
        return entries.stream().map(EntryJson::write).collect(Collectors.joining("\n", "", "\n"));
    }

    /** A text in YAML's double quotes. */
    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\s+", " ") + '"';
    }
}
