package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import java.util.List;

/** What came of giving entries to the shelf: all of them are on disk, or none is. */
public sealed interface Outcome {
    /** What stands against it, sentences; none if all is on disk. */
    List<String> sentences();

    /**
     * All are on disk.
     *
     * @param lastNumber number of the journal's last entry
     * @param numbers number of each entry given, in order; of one that was there already, the number it had
     */
    record Kept(long lastNumber, List<Long> numbers) implements Outcome {
        public Kept {
            numbers = List.copyOf(numbers);
        }

        @Override
        public List<String> sentences() {
            return List.of();
        }
    }

    /**
     * Nothing was written, because another device said meanwhile what can't stand beside it.
     *
     * @param with what was said meanwhile; at least one
     */
    record Clashed(List<Clashing> with) implements Outcome {
        public Clashed {
            with = List.copyOf(with);
        }

        @Override
        public List<String> sentences() {
            return with.stream().map(Clashing::sentence).toList();
        }
    }

    /**
     * Nothing was written, because something of it can't be used.
     *
     * @param sentences what is wrong, where, and what to do; at least one
     */
    record Refused(List<String> sentences) implements Outcome {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * An entry that the device had not seen.
     *
     * @param number its number in the journal
     * @param entry the entry
     * @param sentence what changed
     */
    record Clashing(long number, Entry entry, String sentence) {}
}
