package gudgeon.store.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The order in which entries are told. Neighbours of one type that tell of different things may be told in any, and so may those of
 * which the drill says it.
 *
 * @param groups numbers of entries that may be told in any order among themselves
 * @param fixed number of the entry that stays where it is, unless it is of a group
 */
record Order(List<List<Integer>> groups, int fixed) {
    private static final Set<String> FREE = Set.of(
            "taken-off",
            "part-entered",
            "fitted",
            "cleaned",
            "compared",
            "measured",
            "instrument-kept",
            "reading-taken",
            "ordered",
            "piled",
            "wrench-kept",
            "hole-measured",
            "fastener-out",
            "hole-given",
            "start-item-seen");

    /** The fields that say of what an entry tells. */
    private static final List<String> ABOUT = List.of(
            "position",
            "part",
            "dimension",
            "piece",
            "where",
            "joint",
            "hole",
            "instrument",
            "wrench",
            "order",
            "item");

    List<Line> shuffled(List<Line> lines, Random chance) {
        List<Line> all = new ArrayList<>(lines);
        int from = 0;
        for (int to = 1; to <= all.size(); to++) {
            if (to == all.size() || !isNeighbour(all.get(from), all.get(to))) {
                shuffleIfFree(all.subList(from, to), chance);
                from = to;
            }
        }
        groups.forEach(group -> shuffle(all, group, chance));
        return all;
    }

    private boolean isNeighbour(Line one, Line next) {
        return one.type().equals(next.type()) && isFree(one) && isFree(next);
    }

    private boolean isFree(Line line) {
        return FREE.contains(line.type())
                && line.number() != fixed
                && groups.stream().noneMatch(group -> group.contains(line.number()));
    }

    private static void shuffleIfFree(List<Line> run, Random chance) {
        Set<String> about = run.stream().map(Order::about).collect(Collectors.toSet());
        if (about.size() == run.size()) {
            Collections.shuffle(run, chance);
        }
    }

    private static String about(Line line) {
        return Stream.concat(
                        Stream.of("kind", "thread").filter(field -> line.type().equals("piled")), ABOUT.stream())
                .map(line::text)
                .collect(Collectors.joining("\n"));
    }

    private static void shuffle(List<Line> all, List<Integer> group, Random chance) {
        List<Integer> places = new ArrayList<>();
        List<Line> members = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (group.contains(all.get(i).number())) {
                places.add(i);
                members.add(all.get(i));
            }
        }
        Collections.shuffle(members, chance);
        for (int i = 0; i < places.size(); i++) {
            all.set(places.get(i), members.get(i));
        }
    }
}
