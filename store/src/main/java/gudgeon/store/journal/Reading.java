package gudgeon.store.journal;

import gudgeon.rebuild.journal.Entry;
import java.util.List;

/** What came of reading entries: all of them, or every fault found. */
public sealed interface Reading {
    /**
     * Every entry could be read.
     *
     * @param entries the entries in their order
     */
    record Read(List<Entry> entries) implements Reading {
        public Read {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Nothing is taken, because something could not be read.
     *
     * @param sentences what is wrong, where, and what to do; at least one
     */
    record Refused(List<String> sentences) implements Reading {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }
}
