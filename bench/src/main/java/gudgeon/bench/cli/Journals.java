package gudgeon.bench.cli;

import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads journals from files. */
final class Journals {
    /** Some hundred thousand entries; a larger file is not a journal. */
    private static final long LARGEST_BYTES = 64L << 20;

    private Journals() {}

    /** The entries of a file, or every fault of it as sentences. */
    static List<Entry> entries(Path file) {
        Reading reading = JournalFile.read(text(file));
        if (reading instanceof Reading.Refused refused) {
            throw new Unusable(file + " can't be used:\n  " + String.join("\n  ", refused.sentences()));
        }
        return ((Reading.Read) reading).entries();
    }

    private static String text(Path file) {
        if (Files.isDirectory(file)) {
            throw new Unusable(file + " is a folder; name the journal itself, a .jsonl file.");
        }
        if (!Files.exists(file)) {
            throw new Unusable("There is no file " + file + "; check its name and folder.");
        }
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new Unusable(
                        file + " is larger than 64 MB, so it is no journal. Check that it is the right file.");
            }
            return Files.readString(file);
        } catch (CharacterCodingException notText) {
            throw new Unusable(file + " is not a text file in UTF-8. Check that it is the right file.");
        } catch (IOException unreadable) {
            throw new Unusable(file + " can't be read: " + unreadable.getMessage() + ". Check that you may read it.");
        }
    }
}
