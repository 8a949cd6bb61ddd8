package gudgeon.bench.cli;

import gudgeon.rebuild.build.Build;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which build a command is about: one on the shelf, or one that files tell. */
final class AskedBuild {
    @Mixin
    private final DataFolder data = new DataFolder();

    @Option(
            names = "--book",
            paramLabel = "BOOK",
            description = "instead of a build on the shelf: the engine book, a .yaml file")
    private @Nullable Path book;

    @Option(
            names = "--journal",
            paramLabel = "JOURNAL",
            description = "with --book: its journal, one entry a line; without this, nothing has been done yet")
    private @Nullable Path journal;

    /** Whether files tell it, so that no build is named. */
    boolean isFromFiles() {
        return book != null;
    }

    /**
     * The build.
     *
     * @param id the one named, if any
     */
    Build build(Optional<String> id) {
        if (book != null) {
            if (id.isPresent()) {
                throw new Unusable("Name a build on the shelf, or a book with --book, not both.");
            }
            return fromFiles(book);
        }
        if (journal != null) {
            throw new Unusable("A journal alone is not enough; name its engine book with --book.");
        }
        return onShelf(id.orElseThrow(
                () -> new Unusable("Name a build, as gudgeon builds lists them, or an engine book with --book.")));
    }

    /** The shelf that builds stand on, to keep something on it. */
    Shelf shelf() {
        return data.open();
    }

    /** The folder that the shelf and its photos are in. */
    Path folder() {
        return data.path();
    }

    /** What a person calls it: its name on the shelf, or that of its engine. */
    String name(Optional<String> id) {
        if (book != null) {
            return Books.usable(book).engine().name();
        }
        try (Shelf shelf = data.open()) {
            return id.flatMap(shelf::name).orElse("");
        }
    }

    /** The text of the engine book that counts for it. */
    String bookText(Optional<String> id) {
        if (book != null) {
            return Books.text(book);
        }
        try (Shelf shelf = data.open()) {
            return shelf.bookText(id.orElse(""));
        }
    }

    private Build onShelf(String id) {
        try (Shelf shelf = data.open()) {
            return shelf.build(id).orElseThrow(() -> data.noBuild(id));
        }
    }

    private Build fromFiles(Path file) {
        Build untouched = Build.of(Books.usable(file));
        return journal == null ? untouched : untouched.after(Journals.entries(journal));
    }
}
