package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.PartSize;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The span that an honest reading lies in as far as is known, however worn the part. It only serves to see slips: what lies outside
 * is asked about if a slip explains it, and never refused. How wide it is taken is common practice, no source.
 *
 * @param least the least, in the dimension's unit
 * @param most the most
 */
record Plausible(double least, double most) {
    /** Below this, wear may change a size many times over. */
    private static final double LARGE = 5;

    private static final double BESIDE_LIMITS = 0.01;
    private static final double BESIDE_ONE_LIMIT = 0.03;
    private static final double BESIDE_FIGURE = 0.1;
    private static final double TIMES = 3;
    /** A spring that broke is shorter by half or more; nothing is a quarter of what it was. */
    private static final double FAR_TIMES = 4;
    /** From here on, a bore or a piston may be of one of the oversizes. */
    private static final double BORED_MM = 20;

    /**
     * By the book's limits and new range, else its figures, else other readings, else what is usual; empty where nothing is known.
     *
     * @param others other readings of the same dimension, in its unit
     */
    static Optional<Plausible> of(Build build, Dimension dimension, List<Double> others) {
        return byLimits(build.structure(), dimension)
                .or(() -> byFigure(build, dimension))
                .or(() -> byOthers(others))
                .or(() -> dimension.usual().flatMap(Plausible::bySpan));
    }

    /** Among other readings, as near as these lie together; empty where there is none. */
    static Optional<Plausible> among(List<Double> others) {
        if (others.isEmpty()) {
            return Optional.empty();
        }
        double[] sorted = others.stream().mapToDouble(one -> one).sorted().toArray();
        double apart = Math.max(sorted[sorted.length - 1] - sorted[0], Math.abs(sorted[0]) / 4000);
        return Optional.of(new Plausible(sorted[0] - apart, sorted[sorted.length - 1] + apart));
    }

    boolean holds(double value) {
        return value >= least && value <= most;
    }

    double width() {
        return most - least;
    }

    /** Whether moving the decimal point or mistaking the unit shows: the span covers less than one power of ten. */
    boolean tellsScale() {
        return (least > 0 && most < 10 * least) || (most < 0 && least > 10 * most);
    }

    /** Whether a value is of another order of size, or another sign; of spans that tell scale only. */
    boolean isFarFrom(double value) {
        double near = Math.min(Math.abs(least), Math.abs(most)) / FAR_TIMES;
        double far = Math.max(Math.abs(least), Math.abs(most)) * FAR_TIMES;
        return Math.signum(value) != Math.signum(most) || Math.abs(value) < near || Math.abs(value) > far;
    }

    private static Optional<Plausible> bySpan(Expect span) {
        return span.atLeast().isPresent() && span.atMost().isPresent()
                ? Optional.of(new Plausible(
                        span.atLeast().getAsDouble(), span.atMost().getAsDouble()))
                : Optional.empty();
    }

    private static Optional<Plausible> byLimits(Structure structure, Dimension dimension) {
        List<Expect> known = Stream.concat(dimension.expect().stream(), dimension.standard().stream())
                .toList();
        OptionalDouble low = ends(known, true).min();
        OptionalDouble high = ends(known, false).max();
        if (low.isEmpty() && high.isEmpty()) {
            return Optional.empty();
        }
        if (low.isPresent() && high.isPresent()) {
            double size = Math.max(Math.abs(low.getAsDouble()), Math.abs(high.getAsDouble()));
            double beside = Math.max(high.getAsDouble() - low.getAsDouble(), size >= LARGE ? BESIDE_LIMITS * size : 0);
            double bored = dimension.unit() == Unit.MM && size >= BORED_MM ? largestOversize(structure) : 0;
            double least = low.getAsDouble() - beside;
            return Optional.of(new Plausible(
                    low.getAsDouble() >= 0 ? Math.max(0, least) : least, high.getAsDouble() + beside + bored));
        }
        double limit = low.isPresent() ? low.getAsDouble() : high.getAsDouble();
        if (Math.abs(limit) >= LARGE) {
            double beside = BESIDE_ONE_LIMIT * Math.abs(limit);
            return Optional.of(new Plausible(limit - beside, limit + beside));
        }
        return Optional.of(
                low.isPresent()
                        ? new Plausible(limit / TIMES, limit * TIMES)
                        : new Plausible(Math.min(0, limit), limit * TIMES));
    }

    private static DoubleStream ends(List<Expect> spans, boolean least) {
        return spans.stream()
                .map(span -> least ? span.atLeast() : span.atMost())
                .flatMapToDouble(OptionalDouble::stream);
    }

    private static double largestOversize(Structure structure) {
        return structure.positions().stream()
                .map(Position::oversizes)
                .flatMap(List::stream)
                .mapToDouble(one -> one)
                .max()
                .orElse(0);
    }

    /** By the size that the trial fit's figures have of it. */
    private static Optional<Plausible> byFigure(Build build, Dimension dimension) {
        return PartSize.booked(build.book(), dimension)
                .filter(size -> size.unit() == dimension.unit())
                .map(Size::value)
                .filter(value -> Math.abs(value) >= 1)
                .map(value -> about(value, BESIDE_FIGURE));
    }

    private static Optional<Plausible> byOthers(List<Double> others) {
        double[] sorted = others.stream().mapToDouble(one -> one).sorted().toArray();
        return Arrays.stream(sorted)
                .skip(sorted.length / 2)
                .boxed()
                .findFirst()
                .filter(middle -> Math.abs(middle) >= 1)
                .map(middle -> about(middle, BESIDE_FIGURE));
    }

    private static Plausible about(double value, double part) {
        double beside = Math.abs(value) * part;
        return new Plausible(value - beside, value + beside);
    }
}
