package gudgeon.bench.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Markup that stands where words should, in each field under a number of its own, so that a page tells which fields it shows. */
final class Planted {
    /** What a page would run if it took the text for markup, be it between tags or in a tag. */
    static final String MARKUP = "<script>planted()</script>\"'><img src onerror=planted()>";

    private static final Pattern MARK = Pattern.compile("[pP]\\d{3}(?=<script>)");

    private final Map<String, String> fields = new LinkedHashMap<>();
    private final Map<String, List<String>> refused = new TreeMap<>();

    /** The markup for a field; the same each time. Names may have 60 letters, and it has no more. */
    String in(String field) {
        return fields.computeIfAbsent(field, next -> "p%03d".formatted(fields.size())) + MARKUP;
    }

    /** Notes that a field does not take the markup. */
    void refuse(String field, List<String> sentences) {
        refused.put(field, List.copyOf(sentences));
    }

    /** The fields that do not take the markup, with what is said of it. */
    Map<String, List<String>> refused() {
        return Map.copyOf(refused);
    }

    /** The fields whose markup stands as text among some texts. */
    Set<String> shown(List<String> texts) {
        Map<String, String> byMark = new TreeMap<>();
        fields.forEach((field, mark) -> byMark.put(mark, field));
        Set<String> shown = new TreeSet<>();
        for (String text : texts) {
            MARK.matcher(text)
                    .results()
                    .map(found -> found.group().toLowerCase(Locale.ROOT))
                    .filter(byMark::containsKey)
                    .forEach(mark -> shown.add(byMark.get(mark)));
        }
        return shown;
    }

    /** The fields that hold the markup. */
    List<String> fields() {
        List<String> taken = new ArrayList<>(fields.keySet());
        taken.removeAll(refused.keySet());
        return taken;
    }
}
