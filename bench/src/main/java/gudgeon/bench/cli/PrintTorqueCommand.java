package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.fasten.TorquePrint;
import gudgeon.rebuild.fasten.TorqueSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The torque sheet of a build as a PDF file. */
@Command(
        name = "print-torque",
        mixinStandardHelpOptions = true,
        description =
                "Writes the torque sheet for the wall as a PDF file: every joint, how tight, with which wrench, in"
                        + " what order, with boxes to tick.")
final class PrintTorqueCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "[BUILD] FILE",
            arity = "1..2",
            description = "a build on the shelf, unless --book names one; the .pdf file to write")
    private List<String> words = new ArrayList<>();

    @Mixin
    private final AskedBuild asked = new AskedBuild();

    @Mixin
    private final PaperFile paper = new PaperFile();

    @Override
    public Integer call() {
        PrintedBuild printed = PrintedBuild.of(asked, words, 0, "a build and a file");
        TorqueSheet sheet = TorqueSheet.of(printed.build());
        PaperFile.write(printed.file(), new TorquePrint(new Pdf()).of(printed.name(), sheet, paper.paper()));
        Objects.requireNonNull(spec).commandLine().getOut().println(printed.file() + " holds the torque sheet.");
        return Gudgeon.CLEAR;
    }
}
