package gudgeon.bench.cli;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.book.Geometry;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Reads books from files. */
final class Books {
    private Books() {}

    static BookReading read(Path file) {
        if (Files.isDirectory(file)) {
            throw new Unusable(file + " is a folder; name the engine book itself, a .yaml file.");
        }
        if (!Files.exists(file)) {
            throw new Unusable("There is no file " + file + "; check its name and folder.");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return new EngineBookReader().read(stream);
        } catch (IOException unreadable) {
            throw new Unusable(file + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }

    /** A book that can be used, or every fault of it as sentences. */
    static EngineBook usable(Path file) {
        BookReading reading = read(file);
        if (reading instanceof BookReading.Read read) {
            return read.book();
        }
        throw new Unusable(file + " can't be used:\n" + sentences(reading.faults()));
    }

    /** The text of a book that can be used. */
    static String text(Path file) {
        usable(file);
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new Unusable(file + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }

    /** The figures of a book, from which a fit can be tried. */
    static Geometry geometry(Path file) {
        return usable(file)
                .geometry()
                .orElseThrow(() -> new Unusable(file + " has no figures yet, so no fit can be tried. Add its cylinder,"
                        + " crank, gaskets, valves and pistons; docs/engine-book.md says how each is measured."));
    }

    static String sentences(List<Fault> faults) {
        return faults.stream().map(fault -> "  " + fault.sentence()).collect(Collectors.joining("\n"));
    }
}
