package gudgeon.bench.web.fit;

import gudgeon.rebuild.book.Geometry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sizes of one part of the engine.
 *
 * @param title the part
 * @param fields its sizes
 */
public record SizeGroup(String title, List<SizeField> fields) {
    public SizeGroup {
        fields = List.copyOf(fields);
    }

    /** How many of its sizes differ from the book's or can't be used. */
    public long changed() {
        return fields.stream().filter(SizeField::changed).count();
    }

    /** Whether the size of that path belongs to the parts fitted. */
    static boolean fitted(String path, String pistonId, String gasketId) {
        return (!path.startsWith("pistons.") || path.startsWith("pistons." + pistonId + "."))
                && (!path.startsWith("gaskets.") || path.startsWith("gaskets." + gasketId + "."));
    }

    /** The sizes of the parts asked for, in the order of the book. */
    static List<SizeGroup> of(Geometry book, Asked asked) {
        Map<String, List<SizeField>> groups = new LinkedHashMap<>();
        book.sizes().forEach((path, size) -> {
            if (fitted(path, asked.pistonId(), asked.gasketId())) {
                String booked = asked.lengths().number(size.value(), size.unit());
                groups.computeIfAbsent(title(path), title -> new ArrayList<>())
                        .add(new SizeField(
                                size,
                                asked.lengths().symbol(size.unit()),
                                booked,
                                asked.typed().getOrDefault(path, booked),
                                Optional.ofNullable(asked.faults().get(Asked.SIZE + path))));
            }
        });
        return groups.entrySet().stream()
                .map(group -> new SizeGroup(group.getKey(), group.getValue()))
                .toList();
    }

    private static String title(String path) {
        List<String> keys = List.of(path.split("\\."));
        String id = keys.size() > 1 ? keys.get(1) : "";
        return switch (keys.get(0)) {
            case "cylinder" -> "Cylinder";
            case "crank" -> "Crank and rod";
            case "head" -> "Head";
            case "gaskets" -> "Gasket: " + id;
            case "valves" -> "Valve: " + id;
            case "pistons" -> "Piston: " + id;
            default -> keys.get(0);
        };
    }
}
