package gudgeon.store.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** The names that a person gives to parts, instruments, wrenches, orders and heaps; another person gives others. */
final class Names {
    private static final List<String> OTHERS = List.of(
            "the one from the fair",
            "box 3, \"as new\"",
            "Nr. 2 (grün)",
            "№ 7",
            "a/b",
            "<spare>",
            "new & old",
            "it",
            "the better one of the two that lay in the drawer under the bench",
            "50%",
            "second",
            "neuf");

    private Names() {}

    /** Gives each name another, the same in the mistake and in its twin. */
    static void rename(List<Line> lines, Drill drill, Random chance) {
        Set<String> given = new LinkedHashSet<>();
        Stream.concat(drill.fault().stream(), drill.sound().stream())
                .forEach(line -> fields(line).forEach(field -> given.add(line.text(field))));
        given.remove("");
        List<String> others = new ArrayList<>(OTHERS);
        Collections.shuffle(others, chance);
        Map<String, String> renamed = new HashMap<>();
        for (String name : given) {
            int next = renamed.size();
            String round = next < others.size() ? "" : " " + next;
            renamed.put(name, others.get(next % others.size()) + round);
        }
        lines.forEach(line -> fields(line)
                .filter(field -> renamed.containsKey(line.text(field)))
                .forEach(field -> line.json().put(field, renamed.get(line.text(field)))));
    }

    private static Stream<String> fields(Line line) {
        boolean heap = line.type().equals("piled") || line.type().equals("hole-given");
        return Stream.concat(
                        Stream.of("part", "instrument", "wrench", "order"), heap ? Stream.of("kind") : Stream.empty())
                .filter(field -> line.json().path(field).isTextual());
    }
}
