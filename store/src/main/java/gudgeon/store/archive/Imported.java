package gudgeon.store.archive;

import java.util.List;

/** What came of taking in an archive. */
public sealed interface Imported {
    /**
     * It is on the shelf.
     *
     * @param id the build's id
     * @param name what the person calls it
     * @param entries how many entries its journal has
     * @param photos how many photos came with it
     */
    record TakenIn(String id, String name, long entries, int photos) implements Imported {}

    /**
     * The build was on the shelf already and was not touched, but photos of it that were missing or damaged are back.
     *
     * @param id the build's id
     * @param photos how many photos were put back, at least one
     */
    record PhotosPutBack(String id, int photos) implements Imported {}

    /**
     * Nothing was taken in.
     *
     * @param sentences what is wrong and what to do; at least one
     */
    record Refused(List<String> sentences) implements Imported {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }
}
