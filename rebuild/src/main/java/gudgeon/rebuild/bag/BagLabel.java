package gudgeon.rebuild.bag;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.TakingDown;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a label says, the most needed first; a small one leaves off the end.
 *
 * @param bag whose label it is
 * @param title what stands largest on it
 * @param date when the bag was filled last, as year, month and day; empty for one that is still to be filled
 * @param parts what lies in it, each with how many
 * @param further what else is worth knowing: how each stands, where it belongs, with which step it goes in, where it is kept
 */
public record BagLabel(Bag bag, String title, String date, List<String> parts, List<String> further) {
    public BagLabel {
        parts = List.copyOf(parts);
        further = List.copyOf(further);
    }

    /** Labels of all bags and loose parts of a build of which something still lies about. */
    public static List<BagLabel> all(Build build, ZoneId zone) {
        return Bag.all(build).stream()
                .filter(bag -> !bag.left().isEmpty())
                .map(bag -> of(bag, zone))
                .toList();
    }

    /** Labels of bags still to be filled, numbered on from those that there are; on them there is room to write. */
    public static List<BagLabel> empty(Build build, int count) {
        return TakingDown.suggestedBags(build, count).stream()
                .map(name -> new Bag(name, List.of()))
                .map(bag -> new BagLabel(bag, bag.title(), "", List.of(), List.of()))
                .toList();
    }

    /** The label of a bag, with days counted in a zone. */
    public static BagLabel of(Bag bag, ZoneId zone) {
        List<InBag> left = bag.left();
        String date =
                bag.filled().map(at -> at.atZone(zone).toLocalDate().toString()).orElse("");
        boolean loose = bag.name().isEmpty();
        List<String> parts = left.stream()
                .filter(one -> !loose || !one.words().equals(bag.title()))
                .map(one -> left.size() > 1 && one.isDecided() ? one.words() + ", " + one.state() : one.words())
                .toList();
        return new BagLabel(bag, bag.title(), date, parts, further(bag, left));
    }

    /** How parts stand is said beside each where there are several; a side only where it is that of all. */
    private static List<String> further(Bag bag, List<InBag> left) {
        List<String> lines = new ArrayList<>();
        Stream<String> state = left.size() > 1
                ? Stream.of()
                : left.stream().filter(InBag::isDecided).map(InBag::state);
        List<String> sides = left.stream().map(InBag::side).distinct().toList();
        addAll(lines, "", Stream.concat(state, sides.size() > 1 ? Stream.of() : sides.stream()));
        addAll(lines, "For: ", left.stream().flatMap(one -> one.step().stream()).map(Step::name));
        addAll(lines, "Kept: ", bag.places().stream().limit(1));
        return lines;
    }

    private static void addAll(List<String> lines, String before, Stream<String> words) {
        List<String> said = words.filter(word -> !word.isEmpty()).distinct().toList();
        if (!said.isEmpty()) {
            lines.add(before + String.join(", ", said));
        }
    }
}
