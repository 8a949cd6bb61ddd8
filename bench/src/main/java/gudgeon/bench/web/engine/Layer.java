package gudgeon.bench.web.engine;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A layer of the engine: what one step puts on.
 *
 * @param step the step
 * @param positions what it fits
 * @param stands whether it is together
 */
public record Layer(Step step, List<Position> positions, boolean stands) {
    public Layer {
        positions = List.copyOf(positions);
    }

    /** The layers of some steps, the outermost first, as a hand meets them. */
    static List<Layer> of(Build build, Collection<Step> steps) {
        Map<String, Integer> rank = new HashMap<>();
        List<String> order = build.structure().precedence().order();
        for (int i = 0; i < order.size(); i++) {
            rank.put(order.get(i), i);
        }
        List<Step> sorted = new ArrayList<>(steps);
        sorted.sort((a, b) -> rank.getOrDefault(b.id(), 0) - rank.getOrDefault(a.id(), 0));
        return Collections.unmodifiableList(sorted).stream()
                .map(step -> new Layer(
                        step,
                        step.fits().stream()
                                .flatMap(id -> build.structure().position(id).stream())
                                .toList(),
                        build.step(step.id()).stands()))
                .toList();
    }
}
