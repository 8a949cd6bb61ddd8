package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.archive.Export;
import gudgeon.store.archive.Export.Exported;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a build into one file. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description =
                "Writes a build, its book, journal and photos, into one .zip file that also opens without Gudgeon.")
final class ExportCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Parameters(index = "0", paramLabel = "BUILD", description = "the build's id, as gudgeon builds lists it")
    private String build = "";

    @Parameters(index = "1", paramLabel = "FILE", description = "the .zip file to write, which must not be there yet")
    private @Nullable Path file;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        Path target = Objects.requireNonNull(file);
        try (Shelf shelf = data.open()) {
            Exported exported = new Export(shelf, new Photos(data.path())).write(build, target);
            out.println(target + " holds the whole build: " + Amount.of(exported.entries(), "entry", "entries") + ", "
                    + Amount.of(exported.photos(), "photo", "photos") + ".");
            exported.notes().forEach(out::println);
            return exported.notes().isEmpty() ? Gudgeon.CLEAR : Gudgeon.NOT_CLEAR;
        }
    }
}
