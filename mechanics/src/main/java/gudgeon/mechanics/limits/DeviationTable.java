package gudgeon.mechanics.limits;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A table of deviations as a standard prints it: a line for each step of sizes, a column for each letter.
 *
 * @param heads the columns' heads; the first is the size in mm up to and including which a line holds
 * @param lines the figures, NaN where there is none
 */
record DeviationTable(List<String> heads, List<double[]> lines) {
    /** Reads a table from its text, a point standing for no figure. */
    static DeviationTable of(String text) {
        List<String[]> words = text.lines().map(line -> line.split(" +")).toList();
        List<double[]> lines =
                words.stream().skip(1).map(DeviationTable::figures).toList();
        return new DeviationTable(List.of(words.get(0)), lines);
    }

    private static double[] figures(String... words) {
        double[] figures = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            figures[i] = words[i].equals(".") ? Double.NaN : Double.parseDouble(words[i]);
        }
        return figures;
    }

    /** The figure of a letter at a size, micrometres; empty where the table has none. */
    OptionalDouble micrometres(String letters, double sizeMm) {
        int column = heads.indexOf(letters);
        if (column < 1) {
            return OptionalDouble.empty();
        }
        return lines.stream()
                .filter(line -> sizeMm <= line[0])
                .limit(1)
                .mapToDouble(line -> line[column])
                .filter(figure -> !Double.isNaN(figure))
                .findFirst();
    }
}
