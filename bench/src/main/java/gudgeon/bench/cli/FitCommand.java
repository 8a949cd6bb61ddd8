package gudgeon.bench.cli;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tries the book's parts together. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description = "Tries the parts of an engine book together and says what clears, touches, or can't be told yet.")
final class FitCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "BOOK", description = "the engine book, a .yaml file")
    private @Nullable Path book;

    @Option(names = "--piston", paramLabel = "ID", description = "the piston to try; the book's first without this")
    private @Nullable String piston;

    @Option(
            names = "--gasket",
            paramLabel = "ID",
            description = "the head gasket to try; the book's first without this")
    private @Nullable String gasket;

    @Option(
            names = "--teeth",
            paramLabel = "N",
            description = "teeth by which the cam is off its mark; positive makes the valves later")
    private int teeth;

    @Option(
            names = "--valve-clearance",
            paramLabel = "MM",
            description = "valve clearance in place of the book's: mm, or with a unit, as in \"2 thou\"")
    private @Nullable String valveClearance;

    @Option(names = "--turned", description = "the piston turned by half a turn")
    private boolean turned;

    @Option(names = "--inch", description = "sentences and table in inches")
    private boolean inch;

    @Option(names = "--json", description = "everything as JSON, see docs/fit-json.md")
    private boolean json;

    @Option(names = "--svg", paramLabel = "FILE", description = "also draws the gaps over the crank angle into a file")
    private @Nullable Path svg;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        LengthUnit unit = inch ? LengthUnit.INCH : LengthUnit.MM;
        Geometry read = Books.geometry(Objects.requireNonNull(book));
        TrialFit fit = fit(read, unit);
        if (json) {
            out.println(FitJson.text(fit));
        } else {
            FitTable.print(fit, unit, out);
        }
        if (svg != null) {
            draw(fit, svg, unit);
        }
        return fit.allClear() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
    }

    private TrialFit fit(Geometry read, LengthUnit unit) {
        Choice choice = new Choice(
                Optional.ofNullable(piston),
                Optional.ofNullable(gasket),
                teeth,
                valveClearance == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Typed.mm("--valve-clearance", valveClearance)),
                turned,
                Map.of());
        try {
            return TrialFit.of(read, choice, unit);
        } catch (UnknownChoice unknown) {
            throw new Unusable(String.join("\n", unknown.sentences()));
        }
    }

    private static void draw(TrialFit fit, Path file, LengthUnit unit) {
        try {
            Files.writeString(file, GapPicture.svg(fit, unit), StandardCharsets.UTF_8);
        } catch (IOException unwritable) {
            throw new Unusable(file + " can't be written: " + unwritable.getMessage()
                    + ". Name a file in a folder that you may write to.");
        }
    }
}
