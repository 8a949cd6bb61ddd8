package gudgeon.rebuild.timing;

import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.CrankSizes;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Geometry;
import java.util.List;
import java.util.Optional;

/** The crank as the book has it. */
final class BookedCrank {
    private BookedCrank() {}

    static Optional<Crank> of(EngineBook book) {
        return sizes(book)
                .map(sizes -> crank(
                        sizes.stroke().value(),
                        sizes.rod().value(),
                        sizes.pinOffset().value()));
    }

    /** Stroke, rod and pin offset with their doubts, in mm; none where the book has no figures. */
    static List<Quantity> quantities(EngineBook book) {
        return sizes(book)
                .map(sizes -> List.of(
                        sizes.stroke().quantity(),
                        sizes.rod().quantity(),
                        sizes.pinOffset().quantity()))
                .orElse(List.of());
    }

    static Crank crank(double strokeMm, double rodMm, double pinOffsetMm) {
        return new Crank(strokeMm / 2, rodMm, pinOffsetMm, 0);
    }

    private static Optional<CrankSizes> sizes(EngineBook book) {
        return book.geometry().map(Geometry::crank);
    }
}
