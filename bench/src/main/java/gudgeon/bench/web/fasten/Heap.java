package gudgeon.bench.web.fasten;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fastening;
import gudgeon.rebuild.journal.Fastening.Piled;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What lies in the heap, of each kind what was said last. */
final class Heap {
    private Heap() {}

    static List<Piled> of(Build build) {
        Map<String, Piled> kinds = new LinkedHashMap<>();
        build.told(Piled.class, Fastening.PILE)
                .forEach(told -> kinds.put(told.fact().kind(), told.fact()));
        return List.copyOf(kinds.values());
    }
}
