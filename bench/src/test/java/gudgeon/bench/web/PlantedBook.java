package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.book.Fault;
import gudgeon.rebuild.book.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * An engine book with markup behind each of its texts, wherever the reader takes it: a key that stands in many entries is tried in the
 * first, then planted in all.
 */
final class PlantedBook {
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * A value in the file.
     *
     * @param field its keys from the top, without the numbers in a list
     * @param path the same with the ids of what it is in, as the reader names it
     * @param from where it begins in the text
     * @param to where it ends
     */
    private record Value(String field, String path, int from, int to) {}

    private final String text;
    private final Planted planted;
    private final List<Value> values = new ArrayList<>();

    private PlantedBook(String text, Planted planted) {
        this.text = text;
        this.planted = planted;
        Node root =
                new Compose(LoadSettings.builder().build()).composeString(text).orElseThrow();
        collect("book", "", root);
    }

    /** The book with the markup. */
    static String of(String text, Planted planted) {
        PlantedBook book = new PlantedBook(text, planted);
        Map<String, Value> first = new LinkedHashMap<>();
        book.values.forEach(value -> first.putIfAbsent(value.field(), value));
        Set<String> taken = new HashSet<>();
        book.asFarAsTaken(new ArrayList<>(first.values())).forEach(value -> taken.add(value.field()));
        List<Value> all = new ArrayList<>(book.values);
        all.removeIf(value -> !taken.contains(value.field()));
        return book.with(book.asFarAsTaken(all), new LinkedHashMap<>());
    }

    private void collect(String field, String path, Node node) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                String key = ((ScalarNode) tuple.getKeyNode()).getValue();
                collect(field + "." + key, path.isEmpty() ? key : path + "." + key, tuple.getValueNode());
            }
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(one -> collect(field, path + id(one), one));
        } else {
            int from = node.getStartMark().orElseThrow().getIndex();
            values.add(
                    new Value(field, path, from, node.getEndMark().orElseThrow().getIndex()));
        }
    }

    private static String id(Node node) {
        return node instanceof MappingNode mapping
                ? mapping.getValue().stream()
                        .filter(tuple -> tuple.getKeyNode() instanceof ScalarNode key
                                && key.getValue().equals("id"))
                        .map(tuple -> "." + ((ScalarNode) tuple.getValueNode()).getValue())
                        .findFirst()
                        .orElse("")
                : "";
    }

    /** Plants and takes back what the reader points at, until it points at nothing. */
    private List<Value> asFarAsTaken(List<Value> wanted) {
        List<Value> left = new ArrayList<>(wanted);
        while (true) {
            Map<Value, Where> at = new LinkedHashMap<>();
            String tried = with(left, at);
            if (!(new EngineBookReader().read(tried) instanceof BookReading.Refused refused)) {
                return left;
            }
            Set<Value> back = new HashSet<>();
            for (Fault fault : refused.faults()) {
                if (fault.severity() == Fault.Severity.FAULT) {
                    Set<Value> meant = meant(fault, at);
                    meant.forEach(value -> planted.refuse(value.field(), List.of(fault.sentence())));
                    back.addAll(meant);
                }
            }
            assertThat(back).as("what is meant by %s", refused.faults()).isNotEmpty();
            left.removeAll(back);
        }
    }

    /** The value that a fault points at; where it points at none, those of its line, or in the block that it names. */
    private static Set<Value> meant(Fault fault, Map<Value, Where> at) {
        Set<Value> exactly = new HashSet<>();
        Set<Value> near = new HashSet<>();
        at.forEach((value, where) -> {
            if (where.equals(new Where(fault.line(), fault.column()))) {
                exactly.add(value);
            } else if (where.line() == fault.line() || (value.path() + ".").startsWith(fault.path() + ".")) {
                near.add(value);
            }
        });
        return exactly.isEmpty() ? near : exactly;
    }

    /** The text with markup in the values chosen, and where in it they now stand. */
    private String with(List<Value> chosen, Map<Value, Where> at) {
        StringBuilder made = new StringBuilder();
        int done = 0;
        int line = 1;
        for (Value value : chosen) {
            String between = text.substring(done, value.from());
            line += (int) between.chars().filter(c -> c == '\n').count();
            made.append(between);
            at.put(value, new Where(line, made.length() - made.lastIndexOf("\n")));
            made.append(quoted(value));
            done = value.to();
            if (text.charAt(done - 1) == '\n') {
                made.append('\n');
                line++;
            }
        }
        return made.append(text.substring(done)).toString();
    }

    private String quoted(Value value) {
        String plain = text.substring(value.from(), value.to())
                .replaceFirst("^>-", "")
                .replaceAll("^[\"']|[\"']$", "")
                .replaceAll("\\s+", " ")
                .strip();
        try {
            return JSON.writeValueAsString(plain + " " + planted.in(value.field()));
        } catch (JsonProcessingException never) {
            throw new IllegalStateException(never);
        }
    }
}
