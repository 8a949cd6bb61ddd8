package gudgeon.rebuild.reading;

import gudgeon.mechanics.metrology.Distribution;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Expanded;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.reading.Component.Role;
import gudgeon.rebuild.sentence.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A value of a dimension at a place, or one worked out of such, with its doubt.
 *
 * @param at where, in words; empty where the dimension has one place only
 * @param piece which of several alike pieces, from 1
 * @param value the best estimate, in the dimension's unit
 * @param components what its doubt is made of
 * @param readings all readings at the place, those too that a better instrument has overtaken; none of a figure worked out
 * @param doubtKnown whether it is known what it was read with; if not, nothing is proved by it
 */
public record Figure(
        String at, int piece, double value, List<Component> components, List<Reading> readings, boolean doubtKnown) {
    public Figure {
        components = List.copyOf(components);
        readings = List.copyOf(readings);
    }

    /** Value and doubts. */
    public Quantity quantity() {
        return Quantity.of(value, components.stream().map(Component::doubt).toArray(Doubt[]::new));
    }

    /** The expanded uncertainty, 95 %. */
    public double expanded() {
        return Expanded.of(quantity()).halfWidth();
    }

    /** Greatest less least of all readings at the place; 0 where there is one only. */
    public double spread() {
        return readings.stream().mapToDouble(Reading::value).max().orElse(0)
                - readings.stream().mapToDouble(Reading::value).min().orElse(0);
    }

    /** The components, alike ones together, the largest first. */
    public List<Component> budget() {
        Map<String, List<Component>> alike = components.stream()
                .collect(Collectors.groupingBy(Component::what, LinkedHashMap::new, Collectors.toList()));
        return alike.values().stream()
                .map(Figure::together)
                .sorted(Comparator.comparingDouble(
                        (Component one) -> -one.doubt().standardUncertainty()))
                .toList();
    }

    private static Component together(List<Component> alike) {
        Component first = alike.get(0);
        if (alike.size() == 1) {
            return first;
        }
        Quantity all = Quantity.of(0, alike.stream().map(Component::doubt).toArray(Doubt[]::new));
        Doubt doubt = new Doubt(
                first.doubt().origin(), Distribution.NORMAL, all.standardUncertainty(), all.degreesOfFreedom());
        return new Component(first.what(), first.instrument(), first.role(), doubt);
    }

    /**
     * The budget as lines to read, the largest part first.
     *
     * @param unit the dimension's unit
     */
    public List<String> lines(Unit unit) {
        return budget().stream()
                .map(one -> Sentence.capital(one.what()) + ": "
                        + String.format(Locale.ROOT, "%.4f %s", one.doubt().standardUncertainty(), unit.symbol())
                                .strip()
                        + ".")
                .toList();
    }

    /**
     * This less another figure. An error of one instrument that stands on both sides is partly the same on both; how much of it,
     * nobody knows, so it counts once and not twice. What an instrument was set with is the same for all readings of one setting
     * and drops out between those.
     *
     * @param where where the difference is, in words
     * @param sameSetting whether both were read at one setting
     */
    public Figure minus(Figure other, String where, boolean sameSetting) {
        List<Component> all = new ArrayList<>(components);
        for (Component theirs : other.components) {
            Optional<Component> mine = all.stream().filter(theirs::isSharedWith).findFirst();
            if (mine.isEmpty()) {
                all.add(theirs);
            } else if (theirs.doubt().standardUncertainty() > mine.get().doubt().standardUncertainty()) {
                all.set(all.indexOf(mine.get()), theirs);
            }
        }
        if (sameSetting) {
            all.removeIf(one -> one.role() == Role.SETTING || one.role() == Role.SETTING_STEP);
        }
        return new Figure(where, piece, value - other.value, all, List.of(), doubtKnown && other.doubtKnown);
    }

    /**
     * How far it lies from an exact size, with the same doubt.
     *
     * @param by the size, in the figure's unit
     * @param factor 1 where more is farther, -1 where less is
     */
    public Figure shifted(double by, double factor) {
        return new Figure(at, piece, factor * (value - by), components, List.of(), doubtKnown);
    }
}
