package gudgeon.rebuild.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Reads the least gaps wanted; what is left out is common practice for small engines, no source. */
final class WantedReader {
    private static final double VALVE_MM = 1.0;
    private static final double NEAREST_MM = 0.8;
    private static final double SIDE_MM = 0.8;
    private static final double VALVE_TO_VALVE_MM = 1.0;
    private static final double WALL_MM = 0.8;
    private static final double DECK_MM = 0.8;

    private final SizeReader sizes;

    WantedReader(SizeReader sizes) {
        this.sizes = sizes;
    }

    WantedGaps read(Node entry, Set<String> valveIds) {
        Fields all = new Fields(Forms.WANTED, entry, "wanted", "wanted", valveIds, sizes);
        Map<String, WantedGaps.OfValve> valves = new LinkedHashMap<>();
        for (String id : valveIds) {
            Fields fields = new Fields(Forms.WANTED_VALVE, all.entry(id), "wanted." + id, "wanted " + id, sizes);
            valves.put(
                    id,
                    new WantedGaps.OfValve(
                            gap(fields, "bore-gap", VALVE_MM),
                            gap(fields, "valve-gap", VALVE_MM),
                            gap(fields, "nearest-gap", NEAREST_MM),
                            gap(fields, "side-gap", SIDE_MM)));
        }
        return new WantedGaps(
                valves,
                gap(all, "valve-to-valve", VALVE_TO_VALVE_MM),
                gap(all, "wall-gap", WALL_MM),
                gap(all, "deck-gap", DECK_MM));
    }

    private static WantedGap gap(Fields fields, String key, double common) {
        return fields.optionalSize(key)
                .map(size -> new WantedGap(
                        size.value(), size.source().isEmpty() ? "the engine book, no source stated" : size.source()))
                .orElseGet(() -> WantedGap.common(common));
    }
}
