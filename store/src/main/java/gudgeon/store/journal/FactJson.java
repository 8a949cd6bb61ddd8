package gudgeon.store.journal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.journal.Fact;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A fact inside a JSON object. */
final class FactJson {
    private FactJson() {}

    /** Puts a fact into an object, in the newest form of its kind. */
    static void write(Fact fact, ObjectNode to) {
        form(fact).write(fact, to);
    }

    static FactForm<?> form(Fact fact) {
        return FactForms.ALL.stream()
                .filter(form -> form.kind().isInstance(fact))
                .max(Comparator.comparing(FactForm::version))
                .orElseThrow(() -> new IllegalStateException("no form is known for " + fact.getClass()));
    }

    /** Takes a fact out; empty if its type is not known. Whether it counts, the fields' sentences tell. */
    static Optional<Fact> read(JsonFields fields) {
        String word = fields.said("type");
        long version = fields.whole("version", 1, 1000);
        List<FactForm<?>> ofWord =
                FactForms.ALL.stream().filter(form -> form.word().equals(word)).toList();
        Optional<FactForm<?>> form =
                ofWord.stream().filter(each -> each.version() == version).findFirst();
        if (form.isEmpty() && !word.isBlank()) {
            fields.sentences().add(unknown(fields, word, version, !ofWord.isEmpty()));
        }
        return form.map(known -> {
            Fact fact = known.reading().apply(fields);
            fields.tellUnknown(word);
            return fact;
        });
    }

    private static String unknown(JsonFields fields, String word, long version, boolean known) {
        if (known) {
            return fields.where("version") + ": " + word + " has no version " + version
                    + " here. It was written by a newer Gudgeon: update this one.";
        }
        return fields.where("type") + ": '" + JsonFields.shown(word) + "' is no type of entry. Use one of: "
                + FactForms.ALL.stream().map(FactForm::word).distinct().collect(Collectors.joining(", "))
                + ". If a newer Gudgeon wrote it, update this one.";
    }

    /** What is true instead of a corrected entry. */
    static Optional<Fact> instead(ObjectNode object, JsonFields outer) {
        return read(new JsonFields(object, outer.where("instead"), outer.sentences()));
    }
}
