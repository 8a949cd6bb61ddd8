package gudgeon.rebuild.decide;

import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.measure.Evaluated;
import gudgeon.rebuild.reading.Figure;
import java.util.Comparator;
import java.util.Optional;

/** The sizes of the parts that are there now: as read, else as the engine's figures have them, else as the book has them new. */
final class SizesNow {
    private final Build build;
    private final Optional<AsMeasured> figures;

    SizesNow(Build build) {
        this.build = build;
        this.figures = AsMeasured.of(build);
    }

    Optional<Extent> size(Dimension dimension) {
        return read(dimension).or(() -> ofFigures(dimension)).or(() -> asNew(dimension));
    }

    private Optional<Extent> read(Dimension dimension) {
        Comparator<Figure> byValue = Comparator.comparingDouble(Figure::value);
        Evaluated evaluated = Evaluated.of(build, dimension);
        return evaluated.figures().stream()
                .min(byValue)
                .map(least -> new Extent(
                        least.quantity(),
                        evaluated.figures().stream().max(byValue).orElseThrow().quantity()));
    }

    private Optional<Extent> ofFigures(Dimension dimension) {
        return build.structure()
                .position(dimension.of())
                .filter(position -> !dimension.key().isEmpty())
                .flatMap(position -> figures.flatMap(
                        known -> known.geometry().size(Applied.prefix(position, known) + dimension.key())))
                .map(Size::quantity)
                .map(Extent::of);
    }

    /** Anywhere in the range of a new part. */
    static Optional<Extent> asNew(Dimension dimension) {
        return dimension
                .standard()
                .filter(range -> range.atLeast().isPresent() && range.atMost().isPresent())
                .map(range -> {
                    double least = range.atLeast().orElseThrow();
                    double most = range.atMost().orElseThrow();
                    return Extent.of(Quantity.of((least + most) / 2, Doubt.stated((most - least) / 2)));
                });
    }
}
