package gudgeon.rebuild.caution;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The cautions of a book, each once, by kind, with the steps and checks where they stand.
 *
 * @param groups one for each kind that occurs, the gravest first
 */
public record Cautions(List<Group> groups) {
    public Cautions {
        groups = List.copyOf(groups);
    }

    /** The cautions of one kind. */
    public record Group(Hazard hazard, List<Caution> cautions) {
        public Group {
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * A caution.
     *
     * @param text it, a sentence or some
     * @param at ids of the steps and checks where it stands, in the book's order
     * @param names what a fitter calls these
     */
    public record Caution(String text, List<String> at, List<String> names) {
        public Caution {
            at = List.copyOf(at);
            names = List.copyOf(names);
        }
    }

    /** Those of a book. */
    public static Cautions of(Structure structure) {
        Map<String, List<String>> at = new LinkedHashMap<>();
        structure.steps().forEach(step -> add(at, step.cautions(), step.id()));
        structure.checks().forEach(check -> add(at, check.cautions(), check.id()));
        Map<Hazard, List<Caution>> kinds = new EnumMap<>(Hazard.class);
        at.forEach((text, ids) -> kinds.computeIfAbsent(Hazard.of(text), kind -> new ArrayList<>())
                .add(new Caution(text, ids, ids.stream().map(structure::name).toList())));
        return new Cautions(kinds.entrySet().stream()
                .map(kind -> new Group(kind.getKey(), kind.getValue()))
                .toList());
    }

    private static void add(Map<String, List<String>> at, List<String> cautions, String id) {
        cautions.forEach(caution ->
                at.computeIfAbsent(caution, text -> new ArrayList<>()).add(id));
    }

    /** The cautions of a step or check; none where the book does not have it. */
    public static List<String> at(Structure structure, String id) {
        return structure
                .step(id)
                .map(Step::cautions)
                .or(() -> structure.check(id).map(Check::cautions))
                .orElse(List.of());
    }
}
