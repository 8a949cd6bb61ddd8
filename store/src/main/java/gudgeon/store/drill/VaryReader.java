package gudgeon.store.drill;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Reads what may differ from variant to variant. */
final class VaryReader {
    private VaryReader() {}

    static Vary vary(DrillFields fields) {
        fields.known(Set.of("both", "fault", "sound", "any-order", "as-written"));
        List<List<Integer>> groups = new ArrayList<>();
        for (Object group : fields.list("any-order")) {
            groups.add(group(group, fields));
        }
        Set<String> asWritten = new LinkedHashSet<>();
        fields.list("as-written").forEach(field -> asWritten.add(String.valueOf(field)));
        return new Vary(spans(fields, "both"), spans(fields, "fault"), spans(fields, "sound"), groups, asWritten);
    }

    private static List<Integer> group(Object group, DrillFields fields) {
        List<Integer> numbers = new ArrayList<>();
        if (group instanceof List<?> members) {
            members.forEach(member -> numbers.add(member instanceof Integer number ? number : 0));
        }
        if (numbers.size() < 2 || numbers.contains(0)) {
            fields.fault(
                    "'any-order' holds " + group + ". Write each group as the numbers of its entries, such as [2, 3]");
        }
        return numbers;
    }

    private static List<Vary.Span> spans(DrillFields fields, String key) {
        List<Vary.Span> spans = new ArrayList<>();
        for (DrillFields one : fields.each(key)) {
            one.known(Set.of("entry", "field", "from", "to"));
            Vary.Span span = new Vary.Span(one.whole("entry"), one.said("field"), one.number("from"), one.number("to"));
            if (span.from() > span.to()) {
                one.fault("'from' is more than 'to'. Turn them round");
            }
            spans.add(span);
        }
        return spans;
    }

    /** Tells what the journals do not have. */
    static void check(Vary vary, List<Line> fault, List<Line> sound, DrillFields fields) {
        check(vary.both(), "both", fault, fields);
        check(vary.both(), "both", sound, fields);
        check(vary.fault(), "fault", fault, fields);
        check(vary.sound(), "sound", sound, fields);
        vary.anyOrder()
                .forEach(group -> group.stream()
                        .filter(number -> number > fault.size() || number > sound.size())
                        .forEach(number ->
                                fields.fault("'any-order' names entry " + number + ", which not both journals have")));
    }

    private static void check(List<Vary.Span> spans, String key, List<Line> lines, DrillFields fields) {
        spans.stream()
                .filter(span -> span.entry() > lines.size() || !Sizes.holds(lines.get(span.entry() - 1), span.field()))
                .forEach(span -> fields.fault("'" + key + "' varies '" + span.field() + "' of entry " + span.entry()
                        + ", where no number stands. Name an entry and a field of it"));
    }
}
