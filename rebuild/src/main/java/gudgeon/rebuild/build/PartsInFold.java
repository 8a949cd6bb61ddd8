package gudgeon.rebuild.build;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.pcollections.PMap;
import org.pcollections.PVector;
import org.pcollections.TreePVector;

/** The parts in hand while a journal is folded. */
final class PartsInFold {
    private PMap<String, PVector<Part>> parts;
    private PMap<String, Map<String, String>> sizes;

    PartsInFold(State from) {
        parts = from.parts();
        sizes = from.sizes();
    }

    PMap<String, PVector<Part>> parts() {
        return parts;
    }

    /** What was measured on the parts that came off. */
    PMap<String, Map<String, String>> sizes() {
        return sizes;
    }

    void measured(String position, String part, Map<String, String> more, long number) {
        if (part.isEmpty()) {
            Map<String, String> all = new LinkedHashMap<>(sizes.getOrDefault(position, Map.of()));
            all.putAll(more);
            sizes = sizes.plus(position, Map.copyOf(all));
        } else {
            enterUnlessKnown(position, part, number);
            replace(position, part, known -> known.measured(more));
        }
    }

    void enter(Part part) {
        parts = parts.plus(
                part.position(),
                parts.getOrDefault(part.position(), TreePVector.empty()).plus(part));
    }

    /** A part that turns up without having been entered is in hand all the same, only nobody said where it comes from. */
    void enterUnlessKnown(String position, String name, long number) {
        boolean known = name.isEmpty()
                || parts.getOrDefault(position, TreePVector.empty()).stream()
                        .anyMatch(part -> part.name().equals(name));
        if (!known) {
            enter(Part.entered(name, position, Optional.empty(), 1, "", number));
        }
    }

    void replace(String position, String name, UnaryOperator<Part> change) {
        PVector<Part> of = parts.getOrDefault(position, TreePVector.empty());
        for (int i = 0; i < of.size(); i++) {
            if (of.get(i).name().equals(name)) {
                of = of.with(i, change.apply(of.get(i)));
            }
        }
        parts = parts.plus(position, of);
    }
}
