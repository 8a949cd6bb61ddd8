package gudgeon.bench.web.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/** What a form sent, and what of it can't be read, each a sentence. */
final class Form {
    private final Map<String, List<String>> fields;
    private final List<String> refusals;
    private final List<Question> questions = new ArrayList<>();

    Form(Map<String, List<String>> fields, List<String> refusals) {
        this.fields = fields;
        this.refusals = refusals;
    }

    /** The text of a field without spaces around it; empty where there is none. */
    String text(String name) {
        List<String> values = fields.getOrDefault(name, List.of());
        return values.isEmpty() ? "" : values.get(0).strip();
    }

    /** All values of a field that are not empty. */
    List<String> texts(String name) {
        return fields.getOrDefault(name, List.of()).stream()
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Every field whose name begins so and that is not empty, by the rest of its name. */
    Map<String, String> starting(String prefix) {
        Map<String, String> found = new TreeMap<>();
        BiConsumer<String, List<String>> look = (name, values) -> {
            if (name.startsWith(prefix) && !text(name).isEmpty()) {
                found.put(name.substring(prefix.length()), text(name));
            }
        };
        fields.forEach(look);
        return found;
    }

    /** A torque as written; a bare number in the unit that the form says, else in N·m. */
    String torque(String name) {
        return measure(name, "N.m");
    }

    /** A size as written; a bare number in the unit that the form says, else in the one given. */
    String measure(String name, String otherwise) {
        String text = text(name);
        boolean bare = text.matches("[-+\u2212]?[\\d\\s.,/]+");
        String unit = text(name + "-unit").isEmpty() ? otherwise : text(name + "-unit");
        return bare ? text + " " + unit : text;
    }

    /** A whole number; the one given where the field is empty. */
    int whole(String name, String label, int otherwise) {
        String text = text(name);
        if (text.isEmpty()) {
            return otherwise;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notOne) {
            refusals.add(label + ": '" + text + "' is not a whole number. Write one, such as 2.");
            return otherwise;
        }
    }

    /** A whole number, if the field holds anything. */
    OptionalInt optionalWhole(String name, String label) {
        return text(name).isEmpty() ? OptionalInt.empty() : OptionalInt.of(whole(name, label, 0));
    }

    /** A number with a decimal point or comma, if the field holds anything. */
    OptionalDouble number(String name, String label) {
        String text = text(name);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text.replace(',', '.').replaceAll("\\s*(°|deg|%)$", "")));
        } catch (NumberFormatException notOne) {
            refusals.add(label + ": '" + text + "' is not a number. Write one, such as 350.");
            return OptionalDouble.empty();
        }
    }

    /** One of an enum's constants by its name in lower case; the one given where the field is empty or strange. */
    <E extends Enum<E>> E choice(String name, String label, E otherwise) {
        String text = text(name).toUpperCase(Locale.ROOT).replace('-', '_');
        if (text.isEmpty()) {
            return otherwise;
        }
        return constant(text, label, otherwise.getDeclaringClass()).orElse(otherwise);
    }

    /** Several of an enum's constants by their names in lower case. */
    <E extends Enum<E>> List<E> choices(String name, String label, Class<E> kind) {
        return texts(name).stream()
                .flatMap(text -> constant(text.toUpperCase(Locale.ROOT).replace('-', '_'), label, kind).stream())
                .toList();
    }

    private <E extends Enum<E>> Optional<E> constant(String text, String label, Class<E> kind) {
        for (E constant : kind.getEnumConstants()) {
            if (constant.name().equals(text)) {
                return Optional.of(constant);
            }
        }
        refusals.add(
                label + ": '" + text.toLowerCase(Locale.ROOT) + "' can't be chosen here. Choose one from the list.");
        return Optional.empty();
    }

    void refuse(String sentence) {
        refusals.add(sentence);
    }

    void ask(Question question) {
        questions.add(question);
    }

    /** What is asked before anything is taken down. */
    List<Question> questions() {
        return List.copyOf(questions);
    }
}
