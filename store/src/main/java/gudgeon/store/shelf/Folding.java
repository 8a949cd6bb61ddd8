package gudgeon.store.shelf;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.Started;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes a build of what the database keeps of it, once that is proved to be what was written: a size with one bit flipped would
 * else be believed.
 */
record Folding(Journals journals, String id, ReadBooks books) {
    /**
     * The build.
     *
     * @param row what the journal should be
     * @throws ShelfFault if the journal or the book is damaged
     */
    Build build(Journals.Shelved row) {
        List<Line> lines = journals.lines(id);
        List<Entry> entries = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        for (Line line : lines) {
            line.entry().ifPresent(entries::add);
            keys.add(line.key());
        }
        if (Chain.verify(id, lines, keys, row.entries(), row.head()) instanceof Verified.Broken broken) {
            throw DamagedBuild.journal(id, broken.sentences());
        }
        if (entries.size() < lines.size()) {
            throw new ShelfFault("The journal of build " + id + " has entries that this Gudgeon can't read, though they"
                    + " are as they were written. Use the Gudgeon that wrote it, or a newer one.");
        }
        return Build.of(book(entries)).after(entries);
    }

    private EngineBook book(List<Entry> entries) {
        String text = bookText(entries);
        if (books.of(bookOf(entries), text) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new ShelfFault("The engine book of build " + id + " can't be used any more:\n"
                + String.join("\n", faultsOf(text)) + "\nExport the build, or use the Gudgeon that wrote it.");
    }

    /** The text of the book that counts after some entries. */
    String bookText(List<Entry> entries) {
        String hash = bookOf(entries);
        return journals.book(hash)
                .filter(text -> ContentHash.of(text).equals(hash))
                .orElseThrow(() -> DamagedBuild.book(id));
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
