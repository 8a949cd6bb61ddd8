package gudgeon.rebuild.fit;

import gudgeon.mechanics.clearance.Gap;
import gudgeon.mechanics.clearance.Gaps;
import gudgeon.mechanics.clearance.PairGap;
import gudgeon.mechanics.clearance.ValveGaps;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.WantedGap;
import gudgeon.rebuild.book.WantedGaps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The gaps of one fit in one order: for each valve bore, valve, nearest, side and wall gap, then each pair of valves, then the
 * deck gap; each with what is wanted of it.
 */
final class FitGaps {
    /**
     * One gap of the list.
     *
     * @param gap empty for a side gap that does not exist
     */
    record Entry(GapKind kind, List<String> valves, Optional<Gap> gap, WantedGap wanted) {}

    private FitGaps() {}

    static List<Entry> list(Geometry book, Gaps gaps) {
        List<Entry> list = new ArrayList<>();
        WantedGaps wanted = book.wanted();
        for (int v = 0; v < gaps.valves().size(); v++) {
            ValveGaps valve = gaps.valves().get(v);
            String name = book.valves().get(v).id();
            List<String> id = List.of(name);
            WantedGaps.OfValve of = wanted.valves().get(name);
            if (of == null) {
                throw new IllegalStateException("the book wants nothing of the gaps of valve " + name);
            }
            list.add(new Entry(GapKind.BORE, id, Optional.of(valve.bore()), of.bore()));
            list.add(new Entry(GapKind.VALVE, id, Optional.of(valve.valve()), of.valve()));
            list.add(new Entry(GapKind.NEAREST, id, Optional.of(valve.nearest()), of.nearest()));
            list.add(new Entry(GapKind.SIDE, id, valve.side(), of.side()));
            list.add(new Entry(GapKind.WALL, id, Optional.of(valve.wall()), wanted.wall()));
        }
        for (PairGap pair : gaps.valveToValve()) {
            List<String> ids = List.of(
                    book.valves().get(pair.first()).id(),
                    book.valves().get(pair.second()).id());
            list.add(new Entry(GapKind.VALVE_TO_VALVE, ids, Optional.of(pair.gap()), wanted.valveToValve()));
        }
        list.add(new Entry(GapKind.DECK, List.of(), Optional.of(gaps.deck()), wanted.deck()));
        return list;
    }
}
