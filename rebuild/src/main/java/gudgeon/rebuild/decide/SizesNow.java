package gudgeon.rebuild.decide;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import java.util.Optional;

/** The sizes of the parts that are there now: as measured, else as the book's figures have them, else as the book has them new. */
final class SizesNow {
    private final Build build;
    private final Optional<AsMeasured> figures;

    SizesNow(Build build) {
        this.build = build;
        this.figures = AsMeasured.of(build);
    }

    Optional<Quantity> size(Dimension dimension) {
        return ofFigures(dimension).or(() -> Mates.asNew(dimension));
    }

    private Optional<Quantity> ofFigures(Dimension dimension) {
        return build.structure()
                .position(dimension.of())
                .filter(position -> !dimension.key().isEmpty())
                .flatMap(position -> figures.flatMap(
                        known -> known.geometry().size(Applied.prefix(position, known) + dimension.key())))
                .map(Size::quantity);
    }
}
