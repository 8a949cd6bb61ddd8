package gudgeon.rebuild.book;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells what does not hold together in a book's dimensions. */
final class DimensionFaults {
    private final Structure structure;
    private final Faults faults;

    DimensionFaults(Structure structure, Faults faults) {
        this.structure = structure;
        this.faults = faults;
    }

    /** Tells what can't be worked out, whatever else is wrong with the book. */
    void tellFaults() {
        for (Dimension dimension : structure.dimensions()) {
            dimension.derived().ifPresent(derivation -> {
                inCircle(dimension);
                otherUnits(dimension, derivation);
                tooFewPlaces(dimension, derivation);
            });
        }
    }

    /** Tells figures that disagree, as misprints do, and readings that could not reach the trial fit. */
    void tellDoubts(Optional<Geometry> figures) {
        for (Dimension dimension : structure.dimensions()) {
            standardBeyondService(dimension);
            limitsUnusual(dimension);
            keyOfNothing(dimension, figures);
        }
    }

    private void inCircle(Dimension dimension) {
        if (isWorkedOutOf(dimension, dimension.id(), new HashSet<>())) {
            fault(
                    dimension,
                    "It is worked out of itself.",
                    "Look at 'derived' of each dimension that it follows from, and take out the one that is wrong.");
        }
    }

    private boolean isWorkedOutOf(Dimension dimension, String id, Set<String> seen) {
        List<String> of = dimension.derived().map(Derivation::of).orElse(List.of());
        return of.contains(id)
                || of.stream()
                        .filter(seen::add)
                        .flatMap(part -> structure.dimension(part).stream())
                        .anyMatch(part -> isWorkedOutOf(part, id, seen));
    }

    private void otherUnits(Dimension dimension, Derivation derivation) {
        derivation.of().stream()
                .flatMap(part -> structure.dimension(part).stream())
                .filter(part -> part.unit() != dimension.unit())
                .forEach(part -> fault(
                        dimension,
                        "It is in " + dimension.unit().symbol() + " and follows from '" + part.id() + "' in "
                                + part.unit().symbol() + ".",
                        "Write both in one unit."));
    }

    private void tooFewPlaces(Dimension dimension, Derivation derivation) {
        boolean across = derivation.as() == Derivation.As.OVALITY;
        if (!across && derivation.as() != Derivation.As.TAPER) {
            return;
        }
        derivation.of().stream()
                .flatMap(part -> structure.dimension(part).stream())
                .filter(Dimension::isRead)
                .filter(part -> (across ? part.places().axes() : part.places().heights()).size() < 2)
                .forEach(part -> fault(
                        dimension,
                        "Its " + (across ? "ovality" : "taper") + " needs two " + (across ? "axes" : "heights")
                                + ", and '" + part.id() + "' is measured "
                                + (across ? "on fewer." : "at fewer."),
                        "Write both at '" + (across ? "axes" : "heights") + "' of '" + part.id() + "'."));
    }

    private void standardBeyondService(Dimension dimension) {
        dimension
                .standard()
                .ifPresent(standard -> dimension.expect().ifPresent(service -> {
                    if (beyond(standard, service)) {
                        doubt(
                                dimension,
                                "A new part of " + standard.words() + " would be beyond its service limit, "
                                        + service.words() + ".",
                                "Compare both figures with the source; one of them may be misprinted.");
                    }
                }));
    }

    private void limitsUnusual(Dimension dimension) {
        dimension
                .usual()
                .ifPresent(usual -> dimension.expect().or(dimension::standard).ifPresent(limits -> {
                    if (beyond(limits, usual)) {
                        doubt(
                                dimension,
                                "Its limit, " + limits.words() + ", lies outside what is usual, " + usual.words() + ".",
                                "Look for a wrong digit, or widen 'usual'.");
                    }
                }));
    }

    /** Whether an end that the one span states lies outside the other. */
    private static boolean beyond(Expect span, Expect outer) {
        return span.atLeast().stream().anyMatch(value -> !outer.holds(value))
                || span.atMost().stream().anyMatch(value -> !outer.holds(value));
    }

    private void keyOfNothing(Dimension dimension, Optional<Geometry> figures) {
        if (dimension.key().isEmpty()) {
            return;
        }
        String sizes = structure.position(dimension.of()).map(Position::sizes).orElse("");
        if (sizes.isEmpty()) {
            doubt(
                    dimension,
                    "Its key is '" + dimension.key() + "', but '" + dimension.of()
                            + "' does not say which sizes it has.",
                    "Add 'sizes' to that position, or take the key out; without it the readings can't count in the trial fit.");
        } else if (figures.isPresent() && !knows(figures.get(), sizes, dimension.key())) {
            doubt(
                    dimension,
                    "The book's figures have no size '" + dimension.key() + "' at '" + sizes + "'.",
                    "Write the key as the figures have it, or take it out.");
        }
    }

    private static boolean knows(Geometry figures, String sizes, String key) {
        // which piston or gasket it is stands between the two
        return sizes.equals("base-gasket")
                ? key.equals("pressed")
                : figures.sizes().keySet().stream()
                        .anyMatch(path -> path.startsWith(sizes + ".") && path.endsWith("." + key));
    }

    private void fault(Dimension dimension, String what, String expected) {
        faults.fault(dimension.where(), "dimensions." + dimension.id(), what, expected);
    }

    private void doubt(Dimension dimension, String what, String expected) {
        faults.doubt(dimension.where(), "dimensions." + dimension.id(), what, expected);
    }
}
