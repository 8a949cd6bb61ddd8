package gudgeon.rebuild.bag;

import gudgeon.rebuild.build.Build;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A bag, tray or box with what was put into it.
 *
 * @param name as it was written down; empty for a part that lies in none
 * @param holds what was put into it, in the order in which it came off
 */
public record Bag(String name, List<InBag> holds) {
    private static final Pattern SAYS_WHAT_IT_IS =
            Pattern.compile("(?i).*\\b(bags?|trays?|box|boxes|tins?|drawers?|shelf|jars?|crates?)\\b.*");

    public Bag {
        holds = List.copyOf(holds);
    }

    /** Every bag of a build in the order in which they were first filled, then each part that lies in none. */
    public static List<Bag> all(Build build) {
        Map<String, List<InBag>> named = new LinkedHashMap<>();
        List<Bag> bags = new ArrayList<>();
        List<InBag> off = off(build).toList();
        off.stream()
                .filter(one -> !nameOf(one).isEmpty())
                .forEach(one -> named.computeIfAbsent(nameOf(one), name -> new ArrayList<>())
                        .add(one));
        named.forEach((name, holds) -> bags.add(new Bag(name, holds)));
        off.stream().filter(one -> nameOf(one).isEmpty()).forEach(one -> bags.add(new Bag("", List.of(one))));
        return bags;
    }

    /** The bag of a name; one that nothing was put into yet is empty. */
    public static Bag of(Build build, String name) {
        String wanted = name.strip();
        return new Bag(
                wanted, off(build).filter(one -> nameOf(one).equals(wanted)).toList());
    }

    private static Stream<InBag> off(Build build) {
        return build.structure().positions().stream()
                .flatMap(position -> InBag.of(build, position).stream())
                .sorted(Comparator.comparingLong(InBag::entry));
    }

    private static String nameOf(InBag one) {
        return one.off().bag().strip();
    }

    /** What a person calls it: "Bag 3", or as it was written down where that says already what it is; of a part, its name. */
    public String title() {
        if (name.isEmpty()) {
            return holds.stream().findFirst().map(one -> one.position().name()).orElse("No bag");
        }
        return SAYS_WHAT_IT_IS.matcher(name).matches() ? name : "Bag " + name;
    }

    /** What still lies in it. */
    public List<InBag> left() {
        return holds.stream().filter(one -> !one.back()).toList();
    }

    /** What lay in it and is in the engine again. */
    public List<InBag> gone() {
        return holds.stream().filter(InBag::back).toList();
    }

    /** Where it is kept, as was said of what is in it, the newest first. */
    public List<String> places() {
        return holds.stream()
                .sorted(Comparator.comparingLong(InBag::entry).reversed())
                .map(one -> one.off().place().strip())
                .filter(place -> !place.isEmpty())
                .distinct()
                .toList();
    }

    /** When something was put into it last. */
    public Optional<Instant> filled() {
        return holds.stream().map(InBag::at).max(Comparator.naturalOrder());
    }
}
