package gudgeon.mechanics.metrology;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The first-order uncertainty budget of a figure worked out from independent inputs.
 *
 * <p>Each input is moved by its own standard uncertainty u either way, which changes the figure by d- and d+. Its part in
 * the figure's variance is (d-&sup2; + d+&sup2;)/2. Where the figure is straight over that range, this is the
 * law of propagation in the finite-difference form of JCGM 100:2008, 5.1.2 and 5.1.3 note 2. A least gap has kinks,
 * where the place of the least jumps; there the two differences may cancel in a central difference and hide the doubt,
 * but not in their squares, which give the mean square departure from the figure exactly for two straight flanks.
 *
 * @param value the figure at the best estimates
 * @param standardUncertainty its combined standard uncertainty
 * @param lines one for each uncertain input, largest share first
 */
public record Budget(double value, double standardUncertainty, List<Line> lines) {
    /**
     * One input's part.
     *
     * @param input the input's place in the list of inputs
     * @param sensitivity change of the figure per unit of the input, the mean of both flanks
     * @param standardUncertainty the figure's standard uncertainty from this input alone
     * @param degreesOfFreedom those of the input
     * @param share part of the figure's variance, 0 to 1; all are 0 where no input matters, else they add up to 1
     */
    public record Line(
            int input, double sensitivity, double standardUncertainty, double degreesOfFreedom, double share) {}

    public Budget {
        lines = List.copyOf(lines);
    }

    /**
     * The budget of one figure. Costs one evaluation, and two more for each input that has a doubt.
     *
     * @param inputs the inputs
     * @param model the figure from the inputs' values, in their order; must not keep or change the array
     */
    public static Budget of(List<Quantity> inputs, ToDoubleFunction<double[]> model) {
        return ofAll(inputs, x -> new double[] {model.applyAsDouble(x)}).get(0);
    }

    /**
     * The budgets of several figures worked out together, at the cost of one.
     *
     * <p>A figure may not exist for some inputs; the model then gives NaN or an infinity for it. A figure that does not
     * exist at the best estimates has no lines and an uncertainty of 0. Where it ceases to exist on one side of an input
     * only, the other side stands for both.
     *
     * @param inputs the inputs
     * @param model the figures from the inputs' values, always as many in the same order, as a new array each time
     */
    public static List<Budget> ofAll(List<Quantity> inputs, Function<double[], double[]> model) {
        double[] x = inputs.stream().mapToDouble(Quantity::value).toArray();
        double[] middle = model.apply(x);
        List<List<Part>> parts = new ArrayList<>();
        for (int figure = 0; figure < middle.length; figure++) {
            parts.add(new ArrayList<>());
        }
        for (int i = 0; i < x.length; i++) {
            double u = inputs.get(i).standardUncertainty();
            if (u > 0) {
                double estimate = x[i];
                x[i] = estimate + u;
                double[] above = model.apply(x);
                x[i] = estimate - u;
                double[] below = model.apply(x);
                x[i] = estimate;
                for (int figure = 0; figure < middle.length; figure++) {
                    parts.get(figure).add(Part.of(i, inputs.get(i), below[figure], middle[figure], above[figure]));
                }
            }
        }
        List<Budget> budgets = new ArrayList<>();
        for (int figure = 0; figure < middle.length; figure++) {
            budgets.add(combined(middle[figure], parts.get(figure)));
        }
        return List.copyOf(budgets);
    }

    /**
     * The effective degrees of freedom of the combined standard uncertainty, infinite where no input rests on repeat
     * readings: the Welch-Satterthwaite formula (JCGM 100:2008, G.4.1).
     */
    public double effectiveDegreesOfFreedom() {
        double sum = 0;
        for (Line line : lines) {
            sum += line.share() * line.share() / line.degreesOfFreedom();
        }
        return 1 / sum;
    }

    private static Budget combined(double value, List<Part> parts) {
        if (!Double.isFinite(value)) {
            return new Budget(value, 0, List.of());
        }
        double variance = parts.stream().mapToDouble(Part::variance).sum();
        List<Line> lines = parts.stream()
                .map(part -> part.line(variance))
                .sorted(Comparator.comparingDouble(Line::share).reversed())
                .toList();
        return new Budget(value, Math.sqrt(variance), lines);
    }

    /** An input's part before the whole variance is known. */
    private record Part(int input, double sensitivity, double variance, double degreesOfFreedom) {
        static Part of(int input, Quantity quantity, double below, double middle, double above) {
            double up = above - middle;
            double down = middle - below;
            if (!Double.isFinite(up)) {
                up = Double.isFinite(down) ? down : 0;
            }
            if (!Double.isFinite(down)) {
                down = up;
            }
            double sensitivity = (up + down) / (2 * quantity.standardUncertainty());
            return new Part(input, sensitivity, (up * up + down * down) / 2, quantity.degreesOfFreedom());
        }

        Line line(double whole) {
            double share = whole > 0 ? variance / whole : 0;
            return new Line(input, sensitivity, Math.sqrt(variance), degreesOfFreedom, share);
        }
    }
}
