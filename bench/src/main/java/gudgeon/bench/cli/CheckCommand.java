package gudgeon.bench.cli;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.Fault;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a book and says all that is wrong or missing with it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads an engine book and says all that is wrong, doubtful or missing.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BOOK", description = "the engine book, a .yaml file")
    private @Nullable Path book;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Path file = Objects.requireNonNull(book);
        BookReading reading = Books.read(file);
        for (Fault fault : reading.faults()) {
            out.println(word(fault.severity()) + fault.sentence());
        }
        if (reading instanceof BookReading.Refused) {
            out.println(file + " can't be used until the faults above are mended.");
            return Gudgeon.UNUSABLE;
        }
        out.println(reading.faults().isEmpty() ? file + " is complete." : file + " can be used.");
        return Gudgeon.CLEAR;
    }

    private static String word(Fault.Severity severity) {
        return switch (severity) {
            case FAULT -> "Fault.   ";
            case DOUBT -> "Doubt.   ";
            case NOTE -> "Missing. ";
        };
    }
}
