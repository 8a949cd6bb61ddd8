package gudgeon.bench.cli;

import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.fasten.TorquePrint;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.TorqueSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
        if (words.size() > 2) {
            throw new Unusable("'" + words.get(2) + "' is one word too many; name a build and a file.");
        }
        Optional<String> id = words.size() == 2 ? Optional.of(words.get(0)) : Optional.empty();
        Build build = asked.build(id);
        Path file = Path.of(words.get(words.size() - 1));
        PaperFile.write(file, new TorquePrint(new Pdf()).of(asked.name(id), TorqueSheet.of(build), paper.paper()));
        Objects.requireNonNull(spec).commandLine().getOut().println(file + " holds the torque sheet.");
        return Gudgeon.CLEAR;
    }
}
