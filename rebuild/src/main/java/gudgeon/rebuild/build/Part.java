package gudgeon.rebuild.build;

import gudgeon.rebuild.journal.Origin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A part for a position.
 *
 * @param name its name in the build; empty for the one that came off the engine
 * @param position what it is for
 * @param origin where it comes from; empty for the one that came off
 * @param count how many
 * @param remark what was said of it
 * @param entered number of the entry that it came with, 0 if none
 * @param sizes what was measured on it, as written, by the key that the book's figures have
 * @param compared what was compared with the old part and the book
 * @param agrees whether all that was compared agreed
 * @param spent whether it was fitted and taken out again although it can be used only once
 */
public record Part(
        String name,
        String position,
        Optional<Origin> origin,
        int count,
        String remark,
        long entered,
        Map<String, String> sizes,
        List<String> compared,
        boolean agrees,
        boolean spent) {
    public Part {
        sizes = Map.copyOf(sizes);
        compared = List.copyOf(compared);
    }

    static Part thatCameOff(String position) {
        return new Part("", position, Optional.empty(), 1, "", 0, Map.of(), List.of(), true, false);
    }

    /** Whether it is another than the maker's own, so that it may differ from the book. */
    public boolean mayDiffer() {
        return origin.filter(from -> from != Origin.ORIGINAL).isPresent();
    }

    Part measured(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(sizes);
        all.putAll(more);
        return new Part(name, position, origin, count, remark, entered, all, compared, agrees, spent);
    }

    Part compared(List<String> what, boolean agreed) {
        List<String> all = new ArrayList<>(compared);
        what.stream().filter(one -> !all.contains(one)).forEach(all::add);
        return new Part(name, position, origin, count, remark, entered, sizes, all, agrees && agreed, spent);
    }

    Part asSpent() {
        return new Part(name, position, origin, count, remark, entered, sizes, compared, agrees, true);
    }
}
