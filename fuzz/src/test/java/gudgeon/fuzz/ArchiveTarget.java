package gudgeon.fuzz;

import gudgeon.store.archive.Export;
import gudgeon.store.archive.Import;
import gudgeon.store.archive.Imported;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.Verified;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * An archive is refused whole, or taken in whole: then it can be opened, its chain holds, and what is exported again and taken in
 * elsewhere is the same to the letter. An input is a zip file, or a list of files that is {@link Members packed} first, so that the
 * fuzzer need not guess check sums.
 */
public final class ArchiveTarget {
    private static final Path FOLDER = Scratch.folder();

    private ArchiveTarget() {}

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        Path folder = FOLDER.resolve("one");
        try {
            Files.createDirectories(folder);
            Path file = folder.resolve("in.zip");
            Files.write(file, Members.isZip(input) ? input : Members.packed(input));
            take(folder, file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } finally {
            Scratch.remove(folder);
        }
    }

    private static void take(Path folder, Path file) {
        Path data = folder.resolve("first");
        try (Shelf shelf = Shelf.open(data)) {
            Imported imported = new Import(shelf, new Photos(data)).read(file);
            if (imported instanceof Imported.Refused refused) {
                Promise.said(refused.sentences());
                Promise.kept(shelf.builds().isEmpty(), "refused and kept all the same");
            } else if (imported instanceof Imported.TakenIn taken) {
                handedOn(folder, shelf, data, taken.id());
            }
        }
    }

    private static void handedOn(Path folder, Shelf shelf, Path data, String id) {
        Promise.kept(shelf.verify(id) instanceof Verified.Sound, "the chain of what was taken in is broken");
        Promise.kept(shelf.build(id).isPresent(), "what was taken in can't be opened");
        Path again = folder.resolve("again.zip");
        new Export(shelf, new Photos(data)).write(id, again);
        Path elsewhere = folder.resolve("second");
        try (Shelf other = Shelf.open(elsewhere)) {
            Promise.kept(
                    new Import(other, new Photos(elsewhere)).read(again) instanceof Imported.TakenIn,
                    "what was exported is not taken in elsewhere");
            Promise.same(shelf.journal(id), other.journal(id), "the journal");
            Promise.same(shelf.bookText(id), other.bookText(id), "the engine book");
        }
    }
}
