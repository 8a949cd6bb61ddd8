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
 * @param origin where it comes from; empty for the one that came off, and where nobody said
 * @param count how many are left of it
 * @param remark what was said of it
 * @param entered number of the entry that it came with, 0 for the one that came off
 * @param sizes what was measured on it, as written, by the key that the book's figures have
 * @param compared what was compared with the old part and the book
 * @param differing what of it did not agree when it was compared last
 * @param spent whether it is not to be used any more: decided so, or all of it taken out again although it can be used only once
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
        List<String> differing,
        boolean spent) {
    private static final String AS_A_WHOLE = "as a whole";

    public Part {
        sizes = Map.copyOf(sizes);
        compared = List.copyOf(compared);
        differing = List.copyOf(differing);
    }

    static Part thatCameOff(String position) {
        return new Part("", position, Optional.empty(), 1, "", 0, Map.of(), List.of(), List.of(), false);
    }

    static Part entered(String name, String position, Optional<Origin> origin, int count, String remark, long by) {
        return new Part(name, position, origin, count, remark, by, Map.of(), List.of(), List.of(), false);
    }

    /** Whether it is another than the maker's own, so that it may differ from the book. */
    public boolean mayDiffer() {
        return !name.isEmpty() && origin.filter(from -> from == Origin.ORIGINAL).isEmpty();
    }

    /** Whether all that was compared agreed. */
    public boolean agrees() {
        return differing.isEmpty();
    }

    Part measured(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(sizes);
        all.putAll(more);
        return new Part(name, position, origin, count, remark, entered, all, compared, differing, spent);
    }

    /** Compared again, as after it was reworked: what agrees now no longer differs. */
    Part compared(List<String> what, boolean agreed) {
        List<String> named = what.isEmpty() ? List.of(AS_A_WHOLE) : what;
        List<String> all = new ArrayList<>(compared);
        named.stream().filter(one -> !all.contains(one)).forEach(all::add);
        List<String> wrong = new ArrayList<>(differing);
        wrong.removeAll(named);
        if (!agreed) {
            wrong.addAll(named);
        }
        return new Part(name, position, origin, count, remark, entered, sizes, all, wrong, spent);
    }

    Part asSpent(boolean isSpent) {
        return new Part(name, position, origin, count, remark, entered, sizes, compared, differing, isSpent);
    }

    /** Some of it was fitted and taken out again although it can be used only once; what is left can still be used. */
    Part spentBy(int used) {
        int left = Math.max(0, count - used);
        return new Part(name, position, origin, left, remark, entered, sizes, compared, differing, left == 0);
    }
}
