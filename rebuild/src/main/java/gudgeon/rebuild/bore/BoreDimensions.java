package gudgeon.rebuild.bore;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Structure;
import java.util.List;
import java.util.Optional;

/**
 * What the book knows of a bore and the piston that runs in it. The book says which they are by the clearance that it works out of
 * both, of a piston that is made in oversizes or that the trial fit knows as one.
 *
 * @param bore the hole, a dimension of the barrel
 * @param skirt what runs in it, a dimension of the piston
 * @param clearance hole less what runs in it
 * @param piston the position of the piston
 */
public record BoreDimensions(Dimension bore, Dimension skirt, Dimension clearance, Position piston) {
    private static final String SCORE = "score";
    private static final String WALL = "wall";

    /** The first of the book; empty where it has none. */
    public static Optional<BoreDimensions> of(Structure structure) {
        return structure.dimensions().stream()
                .flatMap(dimension -> of(structure, dimension).stream())
                .findFirst();
    }

    private static Optional<BoreDimensions> of(Structure structure, Dimension clearance) {
        List<Dimension> of = clearance
                .derived()
                .filter(derivation -> derivation.as() == Derivation.As.CLEARANCE)
                .map(derivation -> derivation.of().stream()
                        .flatMap(id -> structure.dimension(id).stream())
                        .toList())
                .orElse(List.of());
        if (of.size() != 2) {
            return Optional.empty();
        }
        Dimension bore = of.get(0);
        Dimension skirt = of.get(1);
        return structure
                .position(skirt.of())
                .filter(piston -> !bore.of().equals(piston.id()))
                .filter(piston ->
                        !piston.oversizes().isEmpty() || piston.sizes().equals("pistons"))
                .map(piston -> new BoreDimensions(bore, skirt, clearance, piston));
    }

    /** The clearance wanted: that of new parts, else the service limits; only where it has both ends. */
    public Optional<Expect> wanted() {
        return clearance
                .standard()
                .or(clearance::expect)
                .filter(span -> span.atLeast().isPresent() && span.atMost().isPresent());
    }

    /** Depth of scores, a dimension of the same barrel whose id begins with "score", if the book has one. */
    public Optional<Dimension> score(Structure structure) {
        return structure.dimensionsOf(bore.of()).stream()
                .filter(dimension -> dimension.isRead() && dimension.id().startsWith(SCORE))
                .findFirst();
    }

    /** Thickness of the wall around the bore, a dimension of the same barrel whose id ends with "wall", if the book has one. */
    public Optional<Dimension> wall(Structure structure) {
        return structure.dimensionsOf(bore.of()).stream()
                .filter(dimension -> dimension.isRead() && dimension.id().endsWith(WALL))
                .findFirst();
    }
}
