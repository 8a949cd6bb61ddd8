package gudgeon.store.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.journal.Fact;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * How one kind of fact stands in JSON. A form that was ever written is never changed: a new one with a higher version is added, and
 * the old one is still read.
 *
 * @param word the type's word
 * @param version its version, from 1
 * @param kind the record
 * @param writing puts the record's fields into an object
 * @param reading takes them out again; faults are told to the fields
 */
record FactForm<T extends Fact>(
        String word, int version, Class<T> kind, BiConsumer<T, ObjectNode> writing, Function<JsonFields, T> reading) {

    /** Writes a fact of this kind. */
    void write(Fact fact, ObjectNode to) {
        to.put("type", word).put("version", version);
        writing.accept(kind.cast(fact), to);
    }
}
