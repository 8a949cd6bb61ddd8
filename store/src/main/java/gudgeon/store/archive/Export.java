package gudgeon.store.archive;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Structure;
import gudgeon.store.disk.Reason;
import gudgeon.store.disk.WholeFile;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Line;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.ShelfFault;
import gudgeon.store.shelf.ShelvedJournal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a build into one zip file.
 *
 * @param shelf where the build is
 * @param photos where its photos are
 */
public record Export(Shelf shelf, Photos photos) {
    /**
     * What was written.
     *
     * @param entries how many entries
     * @param photos how many photos
     * @param notes what could not be put in, as sentences
     */
    public record Exported(long entries, int photos, List<String> notes) {
        public Exported {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Writes the build with that id into a file that is not there yet.
     *
     * @throws ShelfFault if there is no such build, the file is there, or it can't be written
     */
    public Exported write(String id, Path file) {
        ShelvedJournal journal = shelf.journal(id)
                .orElseThrow(() ->
                        new ShelfFault("There is no build '" + id + "' on the shelf. gudgeon builds lists them."));
        if (Files.exists(file)) {
            throw new ShelfFault(file + " is there already. Name another file, or remove that one first.");
        }
        Contents contents = Contents.of(journal.lines());
        Map<String, Path> there = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        for (String hash : contents.photos()) {
            Optional<Path> photo = photos.file(hash, Photos.Copy.FULL);
            photo.ifPresentOrElse(
                    found -> there.put(hash, found),
                    () -> notes.add("The photo " + hash + " is not in the data folder, so the archive lacks it."));
        }
        Manifest manifest = new Manifest(id, journal.name(), journal.lines().size(), journal.head(), there.size());
        try {
            WholeFile.write(file, partial -> write(partial, manifest, journal, contents, there));
        } catch (IOException fault) {
            throw new ShelfFault(
                    file + " could not be written: " + Reason.of(fault) + ". See that the disk has room.", fault);
        }
        return new Exported(journal.lines().size(), there.size(), notes);
    }

    private void write(
            Path file, Manifest manifest, ShelvedJournal journal, Contents contents, Map<String, Path> photosThere)
            throws IOException {
        // the file by itself, so that it is closed too where a full disk keeps the archive from being ended
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            put(zip, Names.README.only(), readme(manifest));
            put(zip, Names.BUILD.only(), manifest.json());
            put(zip, Names.BOOK.only(), book(contents.book()));
            for (String hash : contents.earlierBooks()) {
                put(zip, Names.EARLIER_BOOK.named(hash), book(hash));
            }
            put(zip, Names.JOURNAL.only(), lines(journal, Line::json));
            put(zip, Names.JOURNAL_TABLE.only(), JournalTable.text(journal.lines(), structure(contents.book())));
            put(zip, Names.HASHES.only(), lines(journal, Line::hash));
            for (Map.Entry<String, Path> photo : photosThere.entrySet()) {
                zip.putNextEntry(new ZipEntry(Names.PHOTO.named(photo.getKey())));
                Files.copy(photo.getValue(), zip);
                zip.closeEntry();
            }
        }
    }

    private String book(String hash) {
        return shelf.book(hash)
                .orElseThrow(() -> new ShelfFault(
                        "The engine book " + hash + " is not on the shelf. Bring a backup back with gudgeon restore."));
    }

    /** What is in the engine book, for its names; nothing if an older book can no longer be read, since a build that is handed on is. */
    private Structure structure(String hash) {
        return new EngineBookReader().read(book(hash)) instanceof BookReading.Read read
                ? read.book().structure()
                : Structure.none();
    }

    private static String lines(ShelvedJournal journal, Function<Line, String> part) {
        return journal.lines().stream().map(line -> part.apply(line) + "\n").collect(Collectors.joining());
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String readme(Manifest manifest) {
        return """
                The rebuild of: %s

                This is one rebuild out of Gudgeon, whole. Gudgeon takes it in again with: gudgeon import FILE
                Without Gudgeon it can be read as it is:

                book.yaml      the engine book: parts, steps, checks and sizes. A text file in YAML.
                books/         the engine book as it was before it was changed, if it was.
                journal.csv    all that was done and found, told in words: a table that any spreadsheet opens.
                journal.jsonl  the same with every figure by itself, %d entries, one to a line, the oldest first. A text
                               file; each line is one JSON object with what happened (type), when (at, in UTC), on
                               which device, and the fields of its kind. An entry of type corrected strikes out the
                               one whose key it names. Sizes are as they were written: a bare number is in mm.
                photos/        %d photos as JPEG. The journal names each by its file name.
                build.json     the name of the rebuild and how much there is, so that a loss can be seen.
                hashes.txt     a line for each line of the journal: the SHA-256 of the line before it in this file and the
                               journal's line, written one after the other without a line end. The first is made with the
                               SHA-256 of the id in build.json. So a change to any line of the journal can be seen.

                All texts are in UTF-8. Photos and books are named by the SHA-256 of their content.
                """.formatted(manifest.name(), manifest.entries(), manifest.photos());
    }
}
