package gudgeon.rebuild.timing;

import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.metrology.Budget;
import gudgeon.mechanics.metrology.Doubt;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.timing.Inclined;
import gudgeon.mechanics.timing.Rim;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Ignition;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.TypedSpark;
import gudgeon.rebuild.book.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Turns what was read of the spark, or what the book wants, into degrees of the crank before top dead centre. */
record SparkAngle(EngineBook book, TimingInstruments with, List<Doubt> topDoubts) {
    /** The angle read in degrees, negative after top dead centre; empty where the book lacks what it takes. */
    Optional<Quantity> read(TypedSpark text) {
        if (text instanceof TypedSpark.Degrees degrees) {
            return Optional.of(Quantity.exact(degrees.beforeDeg())
                    .with(with.ofDisc(1).toArray(Doubt[]::new))
                    .with(topDoubts.toArray(Doubt[]::new)));
        }
        if (text instanceof TypedSpark.RimLength rim) {
            return book.ignition().flatMap(Ignition::flywheel).map(wheel -> {
                Rim turning = new Rim(wheel.value());
                Quantity angle = Quantity.stated(turning.deg(rim.beforeMm()), turning.deg(TimingInstruments.RIM_MM));
                return angle.with(topDoubts.toArray(Doubt[]::new));
            });
        }
        return text instanceof TypedSpark.Piston piston ? piston(piston) : Optional.empty();
    }

    /** By the piston: the gauge finds its own top, and the crank's sizes carry their doubts into the angle. */
    private Optional<Quantity> piston(TypedSpark.Piston piston) {
        List<Quantity> sizes = BookedCrank.quantities(book);
        double travel = new Inclined(piston.leanDeg()).travelMm(piston.gaugeMm());
        if (sizes.isEmpty() || travel > BookedCrank.of(book).orElseThrow().strokeMm() / 2) {
            return Optional.empty();
        }
        double sign = piston.before() ? 1 : -1;
        Quantity gauge =
                Quantity.read(travel, with.gauge().resolution(), with.gauge().error());
        List<Quantity> inputs = Stream.concat(sizes.stream(), Stream.of(gauge)).toList();
        return Optional.of(worked(inputs, x -> {
            Crank crank = BookedCrank.crank(x[0], x[1], x[2]);
            double down = Math.max(0, x[3]);
            return sign * (piston.before() ? crank.degBeforeTop(down) : crank.degAfterTop(down));
        }));
    }

    private static Quantity worked(List<Quantity> inputs, ToDoubleFunction<double[]> model) {
        Budget budget = Budget.of(inputs, model);
        return Quantity.stated(budget.value(), Math.sqrt(3) * budget.standardUncertainty());
    }

    /** What the book wants, in degrees before top dead centre; empty where it does not say. */
    Optional<Double> wanted() {
        return opens().flatMap(size -> deg(size, size.value()));
    }

    /** How far it may be off either way, in degrees; empty where the book does not say. */
    Optional<Double> mayBeOff() {
        return opens().filter(size -> Ignition.mayBeOff(size) > 0).flatMap(size -> {
            double off = Ignition.mayBeOff(size);
            Optional<Double> most = deg(size, size.value() + off);
            Optional<Double> least = deg(size, Math.max(0, size.value() - off));
            return most.flatMap(up -> least.map(down -> (up - down) / 2));
        });
    }

    private Optional<Size> opens() {
        return book.ignition().flatMap(Ignition::opens);
    }

    private Optional<Double> deg(Size size, double value) {
        return size.unit() == Unit.DEGREES
                ? Optional.of(value)
                : BookedCrank.of(book)
                        .filter(crank -> value <= crank.strokeMm())
                        .map(crank -> crank.degBeforeTop(value));
    }
}
