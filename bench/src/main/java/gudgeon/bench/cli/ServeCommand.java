package gudgeon.bench.cli;

import gudgeon.bench.web.NamedBook;
import gudgeon.bench.web.device.Network;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.FolderInUse;
import gudgeon.store.shelf.Shelf;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves the person's own builds and books. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description =
                "Serves your builds to a browser on this machine, and with --lan to the workshop's phones and tablets; and the trial"
                        + " fit of engine books named.")
final class ServeCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private @Nullable DataFolder data;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "7373",
            description = "the port, 0 for any free one; ${DEFAULT-VALUE} without this")
    private int port;

    @Mixin
    private @Nullable LocalNetwork lan;

    @Parameters(paramLabel = "BOOK", arity = "0..*", description = "engine books, .yaml files")
    private List<Path> books = List.of();

    @Override
    public Integer call() {
        List<NamedBook> named = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Path file : books) {
            named.add(new NamedBook(name(file, names), Books.geometry(file)));
        }
        DataFolder folder = Objects.requireNonNull(data);
        try (Shelf shelf = folder.open()) {
            Photos photos = new Photos(folder.path());
            Serving.run(Objects.requireNonNull(spec).commandLine(), shelf, photos, named, port, network(folder));
        } catch (FolderInUse held) {
            URI first = held.address().orElseThrow(() -> held);
            Objects.requireNonNull(spec)
                    .commandLine()
                    .getOut()
                    .println("Another Gudgeon shows these builds already, at " + first
                            + ". Open that in your browser; this one is not needed.");
        }
        return Gudgeon.CLEAR;
    }

    private Optional<Network> network(DataFolder folder) {
        return Objects.requireNonNull(lan).in(folder.path());
    }

    /** The file's name without its ending, made fit for an address and told apart from the others. */
    private static String name(Path file, Set<String> taken) {
        String plain = Objects.requireNonNullElse(file.getFileName(), file)
                .toString()
                .replaceFirst("\\.[A-Za-z]+$", "")
                .replaceAll("[^A-Za-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String base = plain.isEmpty() ? "book" : plain;
        String name = base;
        for (int n = 2; !taken.add(name); n++) {
            name = base + "-" + n;
        }
        return name;
    }
}
