package gudgeon.rebuild.journal;

import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Sentence;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How sentences about facts name things, in the words of the engine book. */
record Naming(Structure structure) {
    String name(String id) {
        return structure.name(id);
    }

    String names(List<String> ids) {
        return ids.stream().map(this::name).collect(Collectors.joining(", "));
    }

    String counted(String position, int count) {
        return name(position) + (count > 1 ? " (" + count + ")" : "");
    }

    String part(String position, String part) {
        return part.isEmpty() ? "the " + name(position) + " that came off" : name(position) + " '" + part + "'";
    }

    /** The sizes of dimensions, in the book's order. */
    String dimensions(Map<String, String> sizes) {
        List<String> order =
                structure.dimensions().stream().map(dimension -> dimension.id()).toList();
        return sizes.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, String> size) -> order.indexOf(size.getKey()))
                        .thenComparing(Map.Entry::getKey))
                .map(size -> name(size.getKey()) + " " + size.getValue())
                .collect(Collectors.joining(", "));
    }

    static String order(String order) {
        return order.isEmpty() ? "" : ", order " + order;
    }

    /** What goes before a text where there is one. */
    static String with(String before, String text) {
        return text.isEmpty() ? "" : before + text;
    }

    /** A further sentence, where something is left to say. */
    static String and(String more) {
        return more.isBlank() ? "" : " " + Sentence.of(more.strip());
    }
}
