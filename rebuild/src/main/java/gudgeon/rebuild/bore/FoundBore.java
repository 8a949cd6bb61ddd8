package gudgeon.rebuild.bore;

import gudgeon.mechanics.bore.WornBore;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Countable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A bore as it was measured.
 *
 * @param worn its geometry
 * @param least the least reading, which gives the piston its clearance
 * @param worst the largest reading
 * @param overMm the oversize that it was bored to before, 0 for the standard bore
 * @param scored whether the depth of scores was recorded
 * @param reworked whether it was measured after it came back from a machinist
 * @param doubtKnown whether it was said of every reading what it was taken with
 */
public record FoundBore(
        WornBore worn,
        Gauged least,
        Gauged worst,
        double overMm,
        boolean scored,
        boolean reworked,
        boolean doubtKnown) {
    /** Metal on each side that boring and honing take to cut clean all round: common practice, no source. */
    public static final Quantity ALLOWANCE_MM = Quantity.stated(0.05, 0.02);
    /** How far below a standard range a bore may be read and still have been bored to it. */
    private static final double MAY_READ_BELOW_MM = 0.02;

    /** The bore of the barrel that counts; empty until it is measured. */
    public static Optional<FoundBore> of(Build build, BoreDimensions dimensions) {
        List<Gauged> readings = Gauged.all(build, dimensions.bore());
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        Comparator<Gauged> bySize =
                Comparator.comparingDouble(reading -> reading.size().value());
        Gauged least = readings.stream().min(bySize).orElseThrow();
        Gauged worst = readings.stream().max(bySize).orElseThrow();
        double over = boredOver(dimensions, least.size().value());
        List<String> axes = dimensions.bore().places().axes();
        Quantity along = axes.isEmpty() ? worst.size() : largest(readings, axes.get(0), worst);
        Quantity across = axes.size() < 2 ? worst.size() : largest(readings, axes.get(1), worst);
        Optional<Quantity> score = score(build, dimensions);
        WornBore worn =
                new WornBore(unworn(dimensions, over, least.size()), along, across, score.orElse(Quantity.exact(0)));
        String barrel = Gauged.part(build, dimensions.bore().of());
        boolean reworked = Countable.since(build, dimensions.bore().of(), barrel) > 0;
        boolean doubtKnown = readings.stream().allMatch(Gauged::doubtKnown);
        return Optional.of(new FoundBore(worn, least, worst, over, score.isPresent(), reworked, doubtKnown));
    }

    /** The least bores that clean it up, with the usual allowance. */
    public WornBore.Least leastBore() {
        return worn.least(ALLOWANCE_MM);
    }

    /** Of an axis that was not measured the worst of the other is to be feared. */
    private static Quantity largest(List<Gauged> readings, String axis, Gauged otherwise) {
        return readings.stream()
                .filter(reading -> reading.at().endsWith(axis))
                .max(Comparator.comparingDouble(reading -> reading.size().value()))
                .orElse(otherwise)
                .size();
    }

    private static double boredOver(BoreDimensions dimensions, double leastMm) {
        return dimensions
                .bore()
                .standard()
                .flatMap(FoundBore::lower)
                .map(lower -> dimensions.piston().oversizes().stream()
                        .filter(over -> leastMm >= lower + over - MAY_READ_BELOW_MM)
                        .max(Double::compare)
                        .orElse(0.0))
                .orElse(0.0);
    }

    private static Optional<Double> lower(Expect span) {
        return span.atLeast().stream().boxed().findFirst();
    }

    /** What the bore was before it wore: what the book has for its size, but no more than was found of it. */
    private static Quantity unworn(BoreDimensions dimensions, double over, Quantity least) {
        Optional<Expect> standard = dimensions
                .bore()
                .standard()
                .filter(span -> span.atLeast().isPresent() && span.atMost().isPresent());
        if (standard.isEmpty()) {
            return least;
        }
        double low = standard.get().atLeast().orElseThrow() + over;
        double high = Math.min(standard.get().atMost().orElseThrow() + over, Math.max(low, least.value()));
        return Quantity.stated((low + high) / 2, (high - low) / 2);
    }

    private static Optional<Quantity> score(Build build, BoreDimensions dimensions) {
        Optional<Dimension> score = dimensions.score(build.structure());
        return score.flatMap(dimension -> Gauged.all(build, dimension).stream()
                .max(Comparator.comparingDouble(reading -> reading.size().value()))
                .map(Gauged::size)
                .filter(size -> size.value() >= 0));
    }
}
