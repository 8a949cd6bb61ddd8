package gudgeon.bench.cli;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.sheet.AssemblySheet;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a book in the order in which the engine goes together. */
@Command(
        name = "book",
        mixinStandardHelpOptions = true,
        description = "Prints an engine book step by step, in the order in which the engine goes together.")
final class BookCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BOOK", arity = "0..1", description = "the engine book, a .yaml file")
    private @Nullable Path file;

    @Option(
            names = "--archetype",
            paramLabel = "ID",
            description = "a book of Gudgeon's own to start from, instead of a file")
    private @Nullable String archetype;

    @Option(names = "--text", description = "the book's own text instead, to save and fill in")
    private boolean text;

    @Override
    public Integer call() {
        if ((file == null) == (archetype == null)) {
            throw new Unusable("Name an engine book, or give --archetype and one of " + known() + ".");
        }
        Sheets out = new Sheets(Objects.requireNonNull(spec).commandLine().getOut());
        if (archetype != null) {
            Archetype own = Archetype.of(archetype)
                    .orElseThrow(() ->
                            new Unusable("There is no archetype '" + archetype + "'; there are " + known() + "."));
            if (text) {
                spec.commandLine().getOut().print(own.text());
                spec.commandLine().getOut().flush();
            } else {
                out.print(AssemblySheet.of(own.book()));
            }
        } else if (text) {
            throw new Unusable("--text goes with --archetype; a file's text is in the file.");
        } else {
            print(Books.usable(Objects.requireNonNull(file)), out);
        }
        return Gudgeon.CLEAR;
    }

    private void print(EngineBook book, Sheets out) {
        if (book.structure().steps().isEmpty()) {
            throw new Unusable(file + " has no steps yet, so there is nothing to print. Add its positions and steps;"
                    + " docs/engine-book.md says how.");
        }
        out.print(AssemblySheet.of(book));
    }

    private static String known() {
        return Arrays.stream(Archetype.values()).map(Archetype::id).collect(Collectors.joining(", "));
    }
}
