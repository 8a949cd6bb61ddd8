package gudgeon.rebuild.plan;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Part;
import gudgeon.rebuild.journal.Origin;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What chance a part is given to be wrong, by where it comes from. Assumptions, from common practice without a source, that the
 * person can change.
 *
 * @param byOrigin from 0 to 1, for every origin
 * @param notSaid from 0 to 1, for a part of which no origin was said
 */
public record Chances(Map<Origin, Double> byOrigin, double notSaid) {
    private static final int PERCENT = 100;

    public Chances {
        byOrigin = Map.copyOf(byOrigin);
    }

    /** 2 % for an original part, 10 % for a pattern part, 8 % for a used one, 10 % for one made here, 5 % where nothing is said. */
    public static Chances usual() {
        return new Chances(
                Map.of(Origin.ORIGINAL, 0.02, Origin.PATTERN, 0.10, Origin.USED, 0.08, Origin.MADE, 0.10), 0.05);
    }

    /** The usual ones, but for those that the person set in a build. */
    public static Chances of(Build build) {
        Map<Origin, Double> all = new EnumMap<>(usual().byOrigin);
        all.putAll(build.chances());
        return new Chances(all, usual().notSaid);
    }

    /** The chance of the part that counts for a position of a build. */
    double of(Build build, String position) {
        return build.partFor(position)
                .flatMap(Part::origin)
                .map(origin -> byOrigin.getOrDefault(origin, notSaid))
                .orElse(notSaid);
    }

    /** The same as a sentence. */
    public String sentence() {
        String each = Stream.of(Origin.values())
                .map(origin -> origin.words() + " " + percent(byOrigin.getOrDefault(origin, notSaid)))
                .collect(Collectors.joining("; "));
        return "Assumed chance that a part is wrong: " + each + "; not said " + percent(notSaid)
                + ". Common practice, no source.";
    }

    private static String percent(double chance) {
        return String.format(Locale.ROOT, "%.3g", chance * PERCENT)
                        .replaceAll("(\\.\\d*?)0+$", "$1")
                        .replaceAll("\\.$", "")
                + " %";
    }
}
