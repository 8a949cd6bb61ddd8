package gudgeon.store.shelf;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import java.util.ArrayList;
import java.util.List;

/** Makes a build of what the database keeps of it. */
record Folding(Journals journals, String id) {
    Build build() {
        List<Entry> entries = entries();
        return Build.of(book(entries)).after(entries);
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (Line line : journals.lines(id)) {
            if (EntryJson.read(line.json()) instanceof Reading.Read read) {
                entries.addAll(read.entries());
            } else {
                throw new ShelfFault("Entry " + line.number() + " of build " + id
                        + " can't be read. gudgeon verify-journal " + id + " says what happened to the journal;"
                        + " gudgeon restore brings a backup back.");
            }
        }
        return entries;
    }

    private EngineBook book(List<Entry> entries) {
        String text = bookText(entries);
        if (new EngineBookReader().read(text) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new ShelfFault("The engine book of build " + id + " can't be used any more:\n"
                + String.join("\n", faultsOf(text)) + "\nExport the build, or use the Gudgeon that wrote it.");
    }

    /** The text of the book that counts after some entries. */
    String bookText(List<Entry> entries) {
        return journals.book(bookOf(entries))
                .orElseThrow(() -> new ShelfFault("The engine book of build " + id
                        + " is not on the shelf. Bring a backup back with gudgeon restore."));
    }

    /** The content hash of that book; empty if there is no entry that names one. */
    static String bookOf(List<Entry> entries) {
        String hash = "";
        for (Entry entry : entries) {
            if (entry.fact() instanceof Started started) {
                hash = started.book();
            } else if (entry.fact() instanceof BookChanged changed) {
                hash = changed.book();
            }
        }
        return hash;
    }

    /** Why a book can't be used, as sentences; empty if it can. */
    static List<String> faultsOf(String bookText) {
        return new EngineBookReader().read(bookText) instanceof BookReading.Refused refused
                ? refused.faults().stream().map(Fault::sentence).toList()
                : List.of();
    }
}
