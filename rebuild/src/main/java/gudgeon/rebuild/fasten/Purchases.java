package gudgeon.rebuild.fasten;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the fewest lengths that serve all the holes for which fasteners must be bought. */
final class Purchases {
    private Purchases() {}

    static List<Purchase> of(List<HoleNow> wanting) {
        Map<String, List<HoleNow>> byThread = new LinkedHashMap<>();
        wanting.forEach(hole ->
                byThread.computeIfAbsent(thread(hole), any -> new ArrayList<>()).add(hole));
        List<Purchase> purchases = new ArrayList<>();
        byThread.forEach((thread, holes) -> purchases.addAll(fewest(thread, holes)));
        return purchases;
    }

    private static String thread(HoleNow hole) {
        return HoleSizes.thread(hole.thread()).map(known -> known.designation()).orElse(hole.thread());
    }

    /**
     * The lengths that do for a hole are neighbours in the standard series, so that taking, for the hole whose longest is the
     * shortest, that longest, and with it all that it serves, needs the fewest lengths (Gupta, Lee and Leung 1979, on points that
     * stab intervals).
     */
    private static List<Purchase> fewest(String thread, List<HoleNow> holes) {
        List<Purchase> purchases = new ArrayList<>();
        List<HoleNow> unserved = new ArrayList<>(holes.stream()
                .sorted(Comparator.comparingDouble(hole -> longest(standard(hole))))
                .toList());
        while (!unserved.isEmpty()) {
            List<Double> first = standard(unserved.get(0));
            List<HoleNow> together = unserved.stream()
                    .filter(hole -> first.isEmpty()
                            ? standard(hole).isEmpty()
                            : standard(hole).contains(longest(first)))
                    .toList();
            List<Double> lengths = new ArrayList<>(first);
            together.forEach(hole -> lengths.retainAll(standard(hole)));
            purchases.add(new Purchase(
                    thread, lengths, together.stream().map(HoleNow::id).toList()));
            unserved.removeAll(together);
        }
        return purchases;
    }

    private static double longest(List<Double> lengths) {
        return lengths.isEmpty() ? Double.POSITIVE_INFINITY : Collections.max(lengths);
    }

    /** The standard lengths for a hole; the maker's own where nothing is known to work one out. */
    private static List<Double> standard(HoleNow hole) {
        List<Double> right =
                HoleSizes.of(hole).map(sizes -> LengthSpan.of(sizes).standard()).orElse(List.of());
        return right.isEmpty() && hole.stack().isEmpty()
                ? hole.makersLength().map(length -> List.of(length.value())).orElse(List.of())
                : right;
    }
}
