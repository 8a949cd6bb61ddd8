package gudgeon.store.journal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.journal.Days;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Takes the fields out of one JSON object. A value that can't be used is told as a sentence and stands in as an empty one, so that
 * all faults of an object are told at once; what was read counts only if none was.
 */
final class JsonFields {
    /** Longest text of a field, in characters. */
    static final int LONGEST_TEXT = 4000;
    /** Longest list. */
    private static final int LONGEST_LIST = 1000;
    /** Greatest count, and the most minutes of one entry. */
    private static final int MOST = 100_000;

    private final ObjectNode object;
    private final String where;
    private final List<String> sentences;
    private final Set<String> asked = new LinkedHashSet<>();

    JsonFields(ObjectNode object, String where, List<String> sentences) {
        this.object = object;
        this.where = where;
        this.sentences = sentences;
    }

    boolean has(String name) {
        return object.has(name);
    }

    /** A text that may be empty or left out. */
    String text(String name) {
        return has(name) ? string(name) : asked(name, "");
    }

    /** A text that must say something. */
    String said(String name) {
        String text = string(name);
        JsonNode node = object.path(name);
        if (node.isTextual() && node.textValue().isBlank()) {
            fault(name, "is empty", "Say which");
        }
        return text;
    }

    private String string(String name) {
        return node(name, JsonNode::isTextual, "a text in quotes")
                .flatMap(node -> proper(name, node.textValue()))
                .orElse("");
    }

    private Optional<String> proper(String name, String text) {
        if (text.length() > LONGEST_TEXT) {
            fault(name, "has " + text.length() + " characters", "Keep it to " + LONGEST_TEXT);
            return Optional.empty();
        }
        boolean odd = text.chars().anyMatch(c -> c < ' ' && c != '\n' && c != '\t')
                || !StandardCharsets.UTF_8.newEncoder().canEncode(text);
        if (odd) {
            fault(name, "holds control characters or half characters", "Type it again without them");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** A SHA-256 content hash in hexadecimal, or empty where none is known. */
    String hash(String name) {
        String text = text(name);
        if (!text.matches("([0-9a-f]{64})?")) {
            fault(name, "is no content hash", "Give the SHA-256 of the content in 64 small hexadecimal digits");
        }
        return text;
    }

    /** A key of an entry. */
    String key(String name) {
        String text = said(name);
        if (!text.isBlank() && !text.matches("[A-Za-z0-9-]{1,64}")) {
            fault(name, "is " + shown(text) + ", which is no key", "Use letters, digits and hyphens, at most 64");
        }
        return text;
    }

    /** A count from 1; 1 when left out. */
    int count(String name) {
        return has(name) ? Math.toIntExact(whole(name, 1, MOST)) : asked(name, 1);
    }

    /** A whole number that must be there. */
    long whole(String name, long least, long most) {
        String wanted = "a whole number from " + least + " to " + most;
        return node(name, node -> node.isIntegralNumber() && node.canConvertToLong(), wanted)
                .map(JsonNode::longValue)
                .filter(value -> within(name, value, value >= least && value <= most, wanted))
                .orElse(least);
    }

    /** Minutes, from 1. */
    int minutes(String name) {
        return Math.toIntExact(whole(name, 1, MOST));
    }

    /** Yes or no. */
    boolean yes(String name) {
        return node(name, JsonNode::isBoolean, "true or false")
                .map(JsonNode::booleanValue)
                .orElse(false);
    }

    /** A share from 0 to 1. */
    double share(String name) {
        return number(name, "a number from 0 to 1", value -> value >= 0 && value <= 1);
    }

    /** A crank angle in [0, 720) degrees, which may be left out. */
    OptionalDouble crankAngle(String name) {
        return has(name)
                ? OptionalDouble.of(
                        number(name, "an angle from 0 up to, but not, 720", value -> value >= 0 && value < 720))
                : asked(name, OptionalDouble.empty());
    }

    /** A number that must be there. */
    double number(String name, String wanted, Predicate<Double> good) {
        return node(name, JsonNode::isNumber, wanted)
                .map(JsonNode::doubleValue)
                .filter(value -> within(name, value, good.test(value), wanted))
                .orElse(0.0);
    }

    /** One of the words of an enum, in small letters with hyphens. */
    <E extends Enum<E>> E word(String name, Class<E> kind) {
        E[] all = kind.getEnumConstants();
        String known = Arrays.stream(all).map(JsonFields::word).collect(Collectors.joining(", "));
        return node(name, JsonNode::isTextual, "one of: " + known)
                .map(JsonNode::textValue)
                .flatMap(text -> Arrays.stream(all)
                        .filter(one -> word(one).equals(text))
                        .findFirst()
                        .or(() -> {
                            fault(name, "is " + shown(text), "Give one of: " + known);
                            return Optional.empty();
                        }))
                .orElse(all[0]);
    }

    /** The same where it may be left out. */
    <E extends Enum<E>> E word(String name, E leftOut) {
        return has(name) ? word(name, leftOut.getDeclaringClass()) : asked(name, leftOut);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A list of texts, none empty; it may be left out. */
    List<String> texts(String name) {
        if (!has(name)) {
            return asked(name, List.of());
        }
        List<String> texts = new ArrayList<>();
        node(name, node -> node.isArray() && node.size() <= LONGEST_LIST, "a list of at most " + LONGEST_LIST)
                .ifPresent(list -> list.forEach(one -> {
                    if (one.isTextual() && !one.textValue().isBlank()) {
                        proper(name, one.textValue()).ifPresent(texts::add);
                    } else {
                        fault(name, "holds " + shown(one.toString()), "Let it hold texts in quotes only");
                    }
                }));
        return texts;
    }

    /** Texts by name, at least one. */
    Map<String, String> named(String name) {
        Map<String, String> all = new LinkedHashMap<>();
        node(
                        name,
                        node -> node.isObject() && !node.isEmpty() && node.size() <= LONGEST_LIST,
                        "an object such as {\"bore\": \"50.00 ± 0.01\"}")
                .ifPresent(object -> object.properties().forEach(each -> {
                    if (each.getValue().isTextual()) {
                        proper(name, each.getValue().textValue()).ifPresent(text -> all.put(each.getKey(), text));
                    } else {
                        fault(name, "holds " + shown(each.getValue().toString()), "Write each size as a text");
                    }
                }));
        return all;
    }

    /** Texts by name, which may be left out. */
    Map<String, String> namedOrNone(String name) {
        boolean none =
                !has(name) || (object.path(name).isObject() && object.path(name).isEmpty());
        return none ? asked(name, Map.of()) : named(name);
    }

    /** One of the words of an enum, which may be left out. */
    <E extends Enum<E>> Optional<E> maybe(String name, Class<E> of) {
        return has(name) ? Optional.of(word(name, of)) : asked(name, Optional.empty());
    }

    /** A day as ISO 8601 writes it, which may be left out. */
    Optional<LocalDate> day(String name) {
        if (!has(name)) {
            return asked(name, Optional.empty());
        }
        String text = string(name);
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException unreadable) {
            fault(name, "is " + shown(text), "Write the day as 2026-01-31");
            return Optional.empty();
        }
    }

    /** A number of days as a list of least, likely and most, which may be left out. */
    Optional<Days> days(String name) {
        if (!has(name)) {
            return asked(name, Optional.empty());
        }
        String wanted = "three whole numbers of days, least, likely and most, such as [3, 7, 21]";
        return node(name, node -> node.isArray() && node.size() == 3 && isDays(node), wanted)
                .map(node -> new Days(
                        node.get(0).intValue(),
                        node.get(1).intValue(),
                        node.get(2).intValue()));
    }

    private static boolean isDays(JsonNode three) {
        int before = 0;
        for (JsonNode days : three) {
            if (!days.isIntegralNumber() || !days.canConvertToInt() || days.intValue() < before) {
                return false;
            }
            before = days.intValue();
        }
        return before <= Days.MOST;
    }

    /** A temperature in degrees Celsius, which may be left out. */
    OptionalDouble celsius(String name) {
        return has(name)
                ? OptionalDouble.of(
                        number(name, "degrees Celsius from -200 to 1000", value -> value >= -200 && value <= 1000))
                : asked(name, OptionalDouble.empty());
    }

    /** A number from 0 up, which may be left out. */
    OptionalDouble positive(String name, double most) {
        return has(name)
                ? OptionalDouble.of(number(name, "a number from 0 to " + most, value -> value >= 0 && value <= most))
                : asked(name, OptionalDouble.empty());
    }

    /** A number within bounds, which may be left out. */
    OptionalDouble between(String name, double least, double most) {
        return has(name)
                ? OptionalDouble.of(number(
                        name, "a number from " + least + " to " + most, value -> value >= least && value <= most))
                : asked(name, OptionalDouble.empty());
    }

    /** Words of an enum, which may be left out; one that is not known is told. */
    <E extends Enum<E>> List<E> words(String name, Class<E> kind) {
        List<E> all = List.of(kind.getEnumConstants());
        List<E> said = new ArrayList<>();
        for (String text : texts(name)) {
            all.stream()
                    .filter(one -> word(one).equals(text))
                    .findFirst()
                    .ifPresentOrElse(
                            said::add,
                            () -> fault(
                                    name,
                                    "holds " + shown(text),
                                    "Let it hold some of: "
                                            + all.stream().map(JsonFields::word).collect(Collectors.joining(", "))));
        }
        return said;
    }

    /** Points of a plane in mm, which may be left out. */
    List<Point> points(String name) {
        return has(name)
                ? node(
                                name,
                                node -> node.isArray() && all(node, JsonFields::isPoint),
                                "a list of points such as [6.0, 8.5]")
                        .map(list -> StreamSupport.stream(list.spliterator(), false)
                                .map(JsonFields::point)
                                .toList())
                        .orElse(List.of())
                : asked(name, List.of());
    }

    /** Points of a plane in mm, by name. */
    Map<String, Point> namedPoints(String name) {
        Map<String, Point> points = new LinkedHashMap<>();
        node(
                        name,
                        node -> node.isObject() && all(node, JsonFields::isPoint),
                        "an object of points such as {\"h1\": [6.0, 8.5]}")
                .ifPresent(object ->
                        object.properties().forEach(each -> points.put(each.getKey(), point(each.getValue()))));
        return points;
    }

    private static boolean all(JsonNode several, Predicate<JsonNode> good) {
        return several.size() <= LONGEST_LIST
                && StreamSupport.stream(several.spliterator(), false).allMatch(good);
    }

    private static boolean isPoint(JsonNode node) {
        return node.isArray()
                && node.size() == 2
                && all(node, part -> part.isNumber() && Double.isFinite(part.doubleValue()));
    }

    private static Point point(JsonNode pair) {
        return new Point(pair.get(0).doubleValue(), pair.get(1).doubleValue());
    }

    /** Hours a week. */
    double hours(String name) {
        return number(name, "hours a week, above 0 to 168", value -> value > 0 && value <= 168);
    }

    /** An instant as ISO 8601 writes it, in UTC. */
    Instant instant(String name) {
        String text = said(name);
        try {
            return text.isBlank() ? Instant.EPOCH : Instant.parse(text);
        } catch (DateTimeParseException unreadable) {
            fault(name, "is " + shown(text), "Write the time as 2026-01-01T09:00:00Z");
            return Instant.EPOCH;
        }
    }

    /** An object inside, which may be left out. */
    Optional<ObjectNode> object(String name) {
        return has(name)
                ? node(name, JsonNode::isObject, "an object").map(ObjectNode.class::cast)
                : asked(name, Optional.empty());
    }

    String where(String name) {
        return where + ", '" + name + "'";
    }

    List<String> sentences() {
        return sentences;
    }

    /** Tells every field that nobody asked for. */
    void tellUnknown(String type) {
        for (String name : object.properties().stream().map(Map.Entry::getKey).toList()) {
            if (!asked.contains(name)) {
                fault(name, "is not known of " + type, "Take it out; its fields are " + String.join(", ", asked));
            }
        }
    }

    private <T> T asked(String name, T value) {
        asked.add(name);
        return value;
    }

    private Optional<JsonNode> node(String name, Predicate<JsonNode> good, String wanted) {
        asked.add(name);
        JsonNode node = object.path(name);
        if (good.test(node)) {
            return Optional.of(node);
        }
        fault(name, node.isMissingNode() ? "is missing" : "is " + shown(node.toString()), "Give " + wanted);
        return Optional.empty();
    }

    private boolean within(String name, Object value, boolean good, String wanted) {
        if (!good) {
            fault(name, "is " + value, "Give " + wanted);
        }
        return good;
    }

    private void fault(String name, String what, String cure) {
        sentences.add(where + ": '" + name + "' " + what + ". " + cure + ".");
    }

    /** A value as a sentence shows it: never so long that the sentence is lost. */
    static String shown(String value) {
        return value.length() <= 60 ? value : value.substring(0, 57) + "...";
    }
}
