package gudgeon.rebuild.bore;

import static gudgeon.rebuild.bore.Oversize.mm;

import gudgeon.mechanics.bore.FinishedBore;
import gudgeon.mechanics.bore.RingGap;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What to expect once a bore is finished: ring gaps, capacity, compression. */
final class AfterBoring {
    private static final String BORE = "cylinder.bore";

    private AfterBoring() {}

    /** Sentences. */
    static List<String> of(Build build, BoreDimensions dimensions, FoundBore found, FinishedBore finished) {
        double finishedMm = finished.leastMm();
        List<String> after = new ArrayList<>(ringGaps(build, found, finishedMm));
        dimensions
                .wall(build.structure())
                .flatMap(wall -> wall(build, wall, found, finished))
                .ifPresent(after::add);
        build.book().geometry().flatMap(figures -> AsMeasured.of(build)).ifPresent(parts -> {
            List<Figure> now = figures(parts, found.least().size().value());
            List<Figure> then = figures(parts, finishedMm);
            compared(now, then, "sweptCm3", "Capacity", " cm³").ifPresent(after::add);
            compared(now, then, "compressionRatio", "Compression ratio", " : 1").ifPresent(after::add);
        });
        return after;
    }

    /** At its thinnest, were the centre moved towards it by half of the worst wear. */
    private static Optional<String> wall(Build build, Dimension wall, FoundBore found, FinishedBore finished) {
        double shift = Math.max(
                0, (found.worst().size().value() - found.worn().unwornMm().value()) / 2);
        return Gauged.all(build, wall).stream()
                .mapToDouble(reading -> reading.size().value())
                .boxed()
                .min(Double::compare)
                .map(thinnest ->
                        finished.wallLeftMm(thinnest, found.least().size().value(), shift))
                .map(left -> String.format(
                        Locale.ROOT,
                        "The %s will be %.2f mm at its thinnest%s.",
                        wall.name(),
                        left,
                        wall.expect()
                                .map(limits -> (limits.holds(left) ? ", within " : ", outside ") + limits.words())
                                .orElse("")));
    }

    private static List<String> ringGaps(Build build, FoundBore found, double finishedMm) {
        List<String> sentences = new ArrayList<>();
        for (Dimension gap : RingGaps.of(build.structure())) {
            Gauged.last(build, gap).stream()
                    .min(Comparator.comparingDouble(reading -> reading.size().value()))
                    .map(least -> RingGap.inBore(least.size(), found.least().size(), Quantity.exact(finishedMm)))
                    .ifPresent(then -> sentences.add(ringGap(gap, then)));
        }
        sentences.add(String.format(
                Locale.ROOT,
                "New rings of the piston's size should gap at about %.2f to %.2f mm in a bore of %s (rule of thumb; the maker's figure comes first).",
                RingGap.usualLeastMm(finishedMm),
                RingGap.usualMostMm(finishedMm),
                mm(finishedMm)));
        return sentences;
    }

    private static String ringGap(Dimension gap, Quantity then) {
        boolean wide = gap.expect()
                .filter(limits -> limits.atMost().isPresent()
                        && then.value() > limits.atMost().getAsDouble())
                .isPresent();
        return String.format(
                Locale.ROOT,
                "The %s will be %.2f ± %.2f mm with the ring that was measured%s.",
                gap.name(),
                then.value(),
                2 * then.standardUncertainty(),
                wide ? ", which is too wide: buy rings of the piston's size" : "");
    }

    private static List<Figure> figures(AsMeasured parts, double boreMm) {
        Choice choice = parts.choice();
        try {
            return TrialFit.withoutCures(
                            parts.geometry(),
                            new Choice(
                                    choice.pistonId(),
                                    choice.gasketId(),
                                    choice.teethMoved(),
                                    choice.valveClearanceMm(),
                                    choice.turned(),
                                    Map.of(BORE, boreMm)),
                            LengthUnit.MM)
                    .figures();
        } catch (UnknownChoice impossible) {
            return List.of();
        }
    }

    private static Optional<String> compared(
            List<Figure> now, List<Figure> then, String key, String label, String unit) {
        return figure(now, key)
                .flatMap(before -> figure(then, key)
                        .map(after -> String.format(
                                Locale.ROOT, "%s: %.2f%s, now %.2f%s.", label, after.low(), unit, before.low(), unit)));
    }

    private static Optional<Figure> figure(List<Figure> figures, String key) {
        return figures.stream().filter(figure -> figure.key().equals(key)).findFirst();
    }
}
