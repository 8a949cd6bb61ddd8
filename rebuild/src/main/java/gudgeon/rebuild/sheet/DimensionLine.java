package gudgeon.rebuild.sheet;

import gudgeon.rebuild.book.Derivation;
import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Places;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a dimension is measured and what it may be, in sentences. */
public final class DimensionLine {
    private final Structure structure;
    private final Dimension dimension;

    private DimensionLine(Structure structure, Dimension dimension) {
        this.structure = structure;
        this.dimension = dimension;
    }

    /** How it is measured, where, with what, and its limits; empty where the book says nothing of it. */
    public static String of(Structure structure, Dimension dimension) {
        return new DimensionLine(structure, dimension).said();
    }

    private String said() {
        return Stream.of(
                        dimension.how(),
                        at(dimension.places()),
                        dimension.pieces() == 1 ? "" : "On each of " + Amount.of(dimension.pieces(), "piece") + ".",
                        dimension.with().isEmpty() ? "" : "With " + dimension.with() + ".",
                        dimension.derived().map(this::follows).orElse(""),
                        span("New ", dimension.standard()),
                        span("In service ", dimension.expect()),
                        dimension.note().isEmpty() ? "" : Sentence.ended(dimension.note()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String at(Places places) {
        List<String> heights = places.heights();
        List<String> axes = places.axes();
        if (heights.isEmpty() && axes.isEmpty()) {
            return "";
        }
        String each = heights.isEmpty() || axes.isEmpty() ? "" : "; each ";
        return "Places: " + String.join(", ", heights) + each + String.join(", ", axes) + ".";
    }

    private String follows(Derivation derivation) {
        return "Follows from: " + derivation.of().stream().map(structure::name).collect(Collectors.joining("; ")) + ".";
    }

    private static String span(String which, Optional<Expect> span) {
        return span.map(expect -> which + expect.words() + ".").orElse("");
    }
}
