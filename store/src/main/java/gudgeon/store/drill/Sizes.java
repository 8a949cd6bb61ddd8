package gudgeon.store.drill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sizes written in an entry, and other ones in their place. */
final class Sizes {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.(\\d+))?");

    private Sizes() {}

    /** Puts a size of a span in the place of the one written, with as many decimals. */
    static void vary(List<Line> lines, Vary.Span span, Random chance) {
        lines.stream()
                .filter(line -> line.number() == span.entry())
                .forEach(line -> put(line.json(), span, span.from() + chance.nextDouble() * (span.to() - span.from())));
    }

    /** Whether an entry holds a number there. */
    static boolean holds(Line line, String field) {
        return written(line.json(), field).isPresent();
    }

    private static Optional<JsonNode> written(ObjectNode json, String field) {
        JsonNode node = holder(json, field).path(name(field));
        return node.isNumber()
                        || (node.isTextual() && NUMBER.matcher(node.textValue()).find())
                ? Optional.of(node)
                : Optional.empty();
    }

    private static void put(ObjectNode json, Vary.Span span, double size) {
        JsonNode written = written(json, span.field()).orElseThrow();
        ObjectNode holder = (ObjectNode) holder(json, span.field());
        if (written.isNumber()) {
            holder.put(name(span.field()), written.isIntegralNumber() ? Math.rint(size) : size);
            return;
        }
        Matcher number = NUMBER.matcher(written.textValue());
        if (number.find()) {
            int decimals = number.group(1) == null ? 0 : number.group(1).length();
            String text = String.format(Locale.ROOT, "%." + decimals + "f", size);
            holder.put(name(span.field()), number.replaceFirst(Matcher.quoteReplacement(text)));
        }
    }

    private static JsonNode holder(ObjectNode json, String field) {
        int dot = field.indexOf('.');
        return dot < 0 ? json : json.path(field.substring(0, dot));
    }

    private static String name(String field) {
        return field.substring(field.indexOf('.') + 1);
    }
}
