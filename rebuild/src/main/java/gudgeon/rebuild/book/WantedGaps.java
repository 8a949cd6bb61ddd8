package gudgeon.rebuild.book;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The least gaps wanted; where the book states none, the trade's.
 *
 * @param valves those of each valve, by its id
 * @param valveToValve between two valve heads
 * @param wall valve's edge to the bore wall
 * @param deck crown's flat to the head's flat
 */
public record WantedGaps(Map<String, OfValve> valves, WantedGap valveToValve, WantedGap wall, WantedGap deck) {
    public WantedGaps {
        valves = Collections.unmodifiableMap(new LinkedHashMap<>(valves));
    }

    /** What is wanted of one valve's gaps. */
    public record OfValve(WantedGap bore, WantedGap valve, WantedGap nearest, WantedGap side) {}
}
