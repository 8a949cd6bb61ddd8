package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;

/**
 * A block of the book: the keys it may hold. The reader checks books against it, and the schema is written from it, so that
 * both always agree.
 *
 * @param name what the block is of, such as "valve"
 * @param description what it holds, a sentence
 * @param keys the keys it may hold
 * @param ways where a block is written in one of several ways, each of them; else empty
 */
record Form(String name, String description, List<Key> keys, List<Way> ways) {
    Form {
        keys = List.copyOf(keys);
        ways = List.copyOf(ways);
    }

    Form(String name, String description, List<Key> keys) {
        this(name, description, keys, List.of());
    }

    Optional<Key> key(String keyName) {
        return keys.stream().filter(key -> key.name().equals(keyName)).findFirst();
    }

    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /**
     * One way to write a block.
     *
     * @param lead the key that tells this way from the others
     * @param needed what else it must hold
     * @param mayHold what else it may hold
     */
    record Way(String lead, List<String> needed, List<String> mayHold) {
        boolean uses(String key) {
            return key.equals(lead) || needed.contains(key) || mayHold.contains(key);
        }
    }

    /**
     * A key of a block.
     *
     * @param name the key
     * @param value what stands at it
     * @param required whether it must be there
     * @param label what a fitter calls it
     * @param description what it is and how it is measured, a sentence
     */
    record Key(String name, Value value, boolean required, String label, String description) {}

    /** What stands at a key. */
    sealed interface Value {
        /**
         * A size.
         *
         * @param unit what it is held in; a bare number is in it
         * @param low the least a small engine can have
         * @param high the most a small engine can have
         */
        record OfSize(Unit unit, double low, double high) implements Value {}

        /** A crank angle at which a valve opens or closes, such as "45 bbdc". */
        record OfEvent() implements Value {}

        /** A sentence or a name. */
        record OfText() implements Value {}

        /** A whole number. */
        record OfWhole(int low, int high) implements Value {}

        /** One of several words. */
        record OfWord(List<String> words) implements Value {}

        /** One or more of several words. */
        record OfWords(List<String> words) implements Value {}

        /** A sentence or a list of sentences. */
        record OfTexts() implements Value {}

        /** An id or a list of ids of other blocks. */
        record OfIds() implements Value {}

        /** A block. */
        record OfBlock(Form form) implements Value {}

        /** Blocks by their names. */
        record OfNamed(Form form) implements Value {}

        /** A list of blocks, each with its id. */
        record OfList(Form form) implements Value {}

        /** A pair of coordinates in mm. */
        record OfPoint() implements Value {}

        /** A list of such pairs. */
        record OfOutline() implements Value {}

        /** Sizes by dimension, by position. */
        record OfSizes() implements Value {}

        /** A list of pairs of angle and lift. */
        record OfPoints() implements Value {}

        /** A list of sizes of the same thing. */
        record OfReadings() implements Value {}
    }
}
