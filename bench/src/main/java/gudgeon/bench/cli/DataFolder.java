package gudgeon.bench.cli;

import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where builds are kept: the folder a person names, or the user's data folder by the custom of the system. */
final class DataFolder {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder in which builds are kept; without this, gudgeon in your data folder")
    private @Nullable Path folder;

    /** The folder. */
    Path path() {
        return folder == null ? usual() : folder;
    }

    /** Opens the shelf of the folder. */
    Shelf open() {
        return Shelf.open(path());
    }

    /** What is said of a build that is not on the shelf. */
    Unusable noBuild(String id) {
        return new Unusable("There is no build '" + id + "' in " + path() + "; gudgeon builds lists those there are.");
    }

    private static Path usual() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        if (system.contains("win")) {
            return set("APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Gudgeon");
        }
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Gudgeon");
        }
        return set("XDG_DATA_HOME")
                .orElse(home.resolve(".local").resolve("share"))
                .resolve("gudgeon");
    }

    private static Optional<Path> set(String variable) {
        return Optional.ofNullable(System.getenv(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
