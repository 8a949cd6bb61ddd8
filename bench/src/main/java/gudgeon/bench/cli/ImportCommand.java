package gudgeon.bench.cli;

import gudgeon.rebuild.sentence.Amount;
import gudgeon.store.archive.Import;
import gudgeon.store.archive.Imported;
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

/** Takes in a build that was exported. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description =
                "Takes in a build that gudgeon export wrote, after proving all of it; a broken file is refused whole.")
final class ImportCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", description = "the .zip file")
    private @Nullable Path file;

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        try (Shelf shelf = data.open()) {
            Imported imported = new Import(shelf, new Photos(data.path())).read(Objects.requireNonNull(file));
            if (imported instanceof Imported.Refused refused) {
                throw new Unusable(String.join("\n  ", refused.sentences()));
            }
            if (imported instanceof Imported.PhotosPutBack back) {
                out.println("The build " + back.id() + " is on the shelf already and was not touched; "
                        + Amount.of(back.photos(), "photo", "photos") + ", gone or damaged before, put back.");
                return Gudgeon.CLEAR;
            }
            Imported.TakenIn in = (Imported.TakenIn) imported;
            out.println(in.name() + " is on the shelf as " + in.id() + ": "
                    + Amount.of(in.entries(), "entry", "entries") + ", "
                    + Amount.of(in.photos(), "photo", "photos") + ", all proved.");
            return Gudgeon.CLEAR;
        }
    }
}
