package gudgeon.bench.print.label;

import java.util.List;
import java.util.Optional;

/**
 * A label with everything in its place. Lengths in mm from the label's upper left corner.
 *
 * @param lines its texts
 * @param rules heights at which a line to write on is drawn
 * @param ruleLeft where such a line begins
 * @param ruleWidth how long it is
 * @param code its code, unless that would be too fine to be read
 * @param codeLeft where the code begins
 * @param codeTop where the code begins
 * @param codeSize how large it is
 */
public record Placed(
        List<Line> lines,
        List<Double> rules,
        double ruleLeft,
        double ruleWidth,
        Optional<Code> code,
        double codeLeft,
        double codeTop,
        double codeSize) {
    public Placed {
        lines = List.copyOf(lines);
        rules = List.copyOf(rules);
    }

    /**
     * A line of text.
     *
     * @param left where it begins
     * @param top of the line
     * @param points size of its letter
     */
    public record Line(double left, double top, double points, String text) {}
}
