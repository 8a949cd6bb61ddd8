package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.tick.TickPrint;
import gudgeon.rebuild.tick.TickList;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A list of a build with boxes to tick, as a PDF file. */
@Command(
        name = "print-list",
        mixinStandardHelpOptions = true,
        description = "Writes a list with boxes to tick as a PDF file: steps, measuring, order or first-start.")
final class PrintListCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] LIST FILE",
            arity = "2..3",
            description =
                    "a build on the shelf, unless --book names one; steps, measuring, order or first-start; the .pdf file to write")
    private List<String> words = List.of();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Mixin
    private final PaperFile paper = new PaperFile();

    @Override
    public Integer call() {
        PrintedBuild printed = PrintedBuild.of(asked, words, 1, "a build, a list and a file");
        String word = printed.what().get(0);
        TickList.Kind kind = TickList.Kind.of(word)
                .orElseThrow(() -> new Unusable("There is no list '" + word + "'; there are "
                        + Stream.of(TickList.Kind.values())
                                .map(TickList.Kind::word)
                                .collect(Collectors.joining(", ")) + "."));
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        TickList list = TickList.of(kind, printed.build(), today);
        PaperFile.write(printed.file(), new TickPrint(new Pdf()).of(printed.name(), list, paper.paper(), today));
        Objects.requireNonNull(spec).commandLine().getOut().println(printed.file() + " holds the list.");
        return Gudgeon.CLEAR;
    }
}
