package gudgeon.rebuild.compare;

import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.book.PistonEntry;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Two pistons of a book side by side.
 *
 * @param engine the engine's name
 * @param a id of the first piston
 * @param b id of the second piston
 * @param lines size by size, in the order of the book, those that one of them lacks included
 * @param together what all differences together do
 * @param sentence the whole in a sentence or two
 */
public record Comparison(
        String engine, String a, String b, List<Compared> lines, List<Effect> together, String sentence) {
    public Comparison {
        lines = List.copyOf(lines);
        together = List.copyOf(together);
    }

    /**
     * Compares two pistons of a book.
     *
     * @param book the book
     * @param a id of the first piston, mostly the one now fitted
     * @param b id of the second piston
     * @param choice gasket, teeth and clearance that the effects are worked out with; its piston does not matter
     * @param unit the unit in which sentences give lengths
     * @throws UnknownChoice if the book lacks one of them, or its sizes contradict each other
     */
    public static Comparison of(Geometry book, String a, String b, Choice choice, LengthUnit unit) {
        PistonEntry first = piston(book, a);
        PistonEntry second = piston(book, b);
        Effects effects = new Effects(book, first, choice, unit);
        List<Compared> lines = new SideBySide(book, first, second, effects, unit).lines();
        return new Comparison(
                book.engine().name(), a, b, lines, effects.of(effects.like(second)), sentence(a, b, lines));
    }

    private static PistonEntry piston(Geometry book, String id) {
        return book.piston(id)
                .orElseThrow(() -> new UnknownChoice(List.of("The book has no piston '" + id + "'; it has "
                        + book.pistons().stream()
                                .map(piston -> "'" + piston.id() + "'")
                                .collect(Collectors.joining(", "))
                        + ".")));
    }

    private static String sentence(String a, String b, List<Compared> lines) {
        List<String> different = labels(lines, Likeness.DIFFERENT);
        List<String> unproven = labels(lines, Likeness.UNPROVEN);
        List<String> only = labels(lines, Likeness.ONE_ONLY);
        StringBuilder text = new StringBuilder("The piston '" + b + "' ");
        text.append(
                different.isEmpty()
                        ? "differs from '" + a + "' in no size that is proven."
                        : "differs from '" + a + "' in " + String.join(", ", different) + ".");
        if (!unproven.isEmpty()) {
            text.append(" Not proven by these measurements: ")
                    .append(String.join(", ", unproven))
                    .append('.');
        }
        if (!only.isEmpty()) {
            text.append(" Known of one only: ").append(String.join(", ", only)).append('.');
        }
        return text.toString();
    }

    private static List<String> labels(List<Compared> lines, Likeness likeness) {
        return lines.stream()
                .filter(line -> line.likeness() == likeness)
                .map(Compared::label)
                .toList();
    }
}
