package gudgeon.rebuild.book;

import java.util.List;

/** The outcome of reading a book. */
public sealed interface BookReading {
    /** All that is wrong, doubtful or missing, in the order of the file. */
    List<Fault> faults();

    /**
     * A book that can be used.
     *
     * @param book the book
     * @param faults doubts and notes, none of them grave
     */
    record Read(EngineBook book, List<Fault> faults) implements BookReading {
        public Read {
            faults = List.copyOf(faults);
        }
    }

    /**
     * A book that can't be used.
     *
     * @param faults one or more of which is a fault
     */
    record Refused(List<Fault> faults) implements BookReading {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
