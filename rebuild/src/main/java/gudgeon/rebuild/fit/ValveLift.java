package gudgeon.rebuild.fit;

import gudgeon.mechanics.valvetrain.LawLift;
import gudgeon.mechanics.valvetrain.Lift;
import gudgeon.mechanics.valvetrain.LiftBand;
import gudgeon.mechanics.valvetrain.LiftLaw;
import gudgeon.mechanics.valvetrain.LiftTable;
import gudgeon.mechanics.valvetrain.TimedLift;
import gudgeon.rebuild.book.LiftEntry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.ValveEntry;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Makes a valve's lift from what the book knows of it. */
final class ValveLift {
    private static final double OVERLAP_DEG = 360;

    private final ValveEntry valve;
    /** The clearance that was set when a lift was taken at the valve. */
    private final double bookedClearanceMm;

    private final double shiftDeg;
    /** A table's readings, interpolated once. */
    private final Optional<Lift> table;

    ValveLift(ValveEntry valve, double bookedClearanceMm, double shiftDeg) {
        this.valve = valve;
        this.bookedClearanceMm = bookedClearanceMm;
        this.shiftDeg = shiftDeg;
        this.table = valve.lift() instanceof LiftEntry.Table entry ? Optional.of(read(entry)) : Optional.empty();
    }

    private static Lift read(LiftEntry.Table entry) {
        double[] deg = entry.points().stream().mapToDouble(LiftEntry.Point::deg).toArray();
        double[] mm = entry.points().stream().mapToDouble(LiftEntry.Point::mm).toArray();
        return new LiftTable(deg, mm);
    }

    boolean banded() {
        return valve.lift() instanceof LiftEntry.Events;
    }

    Lift lift(ToDoubleFunction<Size> of, boolean lean) {
        if (valve.lift() instanceof LiftEntry.Table entry) {
            Lift readings = table.orElseThrow();
            double zero = entry.zero().map(of::applyAsDouble).orElse(0.0);
            Lift lobe = zero == 0 ? readings : theta -> zeroed(readings.mmAt(theta), zero);
            double centre =
                    entry.centre().map(size -> centre(of.applyAsDouble(size))).orElse(0.0);
            return timed(lobe, centre, entry.at(), entry.rockerRatio(), of);
        }
        if (valve.lift() instanceof LiftEntry.Law entry) {
            Lift lobe = new LawLift(
                    law(entry.law()), of.applyAsDouble(entry.duration()), of.applyAsDouble(entry.greatest()));
            double centre = centre(of.applyAsDouble(entry.centre()));
            return timed(lobe, centre, entry.at(), entry.rockerRatio(), of);
        }
        LiftEntry.Events events = (LiftEntry.Events) valve.lift();
        LiftBand band = LiftBand.of(
                of.applyAsDouble(events.opens()),
                of.applyAsDouble(events.closes()),
                of.applyAsDouble(events.at()),
                of.applyAsDouble(events.greatest()));
        return timed(lean ? band.lean() : band.full(), 0, LiftEntry.At.VALVE, Optional.empty(), of);
    }

    private static double zeroed(double reading, double zero) {
        return reading > 0 ? Math.max(0, reading + zero) : 0;
    }

    private double centre(double stated) {
        return valve.kind() == ValveEntry.Kind.INLET ? OVERLAP_DEG + stated : OVERLAP_DEG - stated;
    }

    private Lift timed(Lift lobe, double centre, LiftEntry.At at, Optional<Size> ratio, ToDoubleFunction<Size> of) {
        double clearance = of.applyAsDouble(valve.clearance());
        return at == LiftEntry.At.VALVE
                ? new TimedLift(lobe, centre + shiftDeg, 1, clearance - bookedClearanceMm)
                : new TimedLift(
                        lobe, centre + shiftDeg, ratio.map(of::applyAsDouble).orElse(1.0), clearance);
    }

    private static LiftLaw law(LiftEntry.LawName name) {
        return switch (name) {
            case HARMONIC -> LiftLaw.HARMONIC;
            case POLYNOMIAL_345 -> LiftLaw.POLYNOMIAL_345;
            case POLYNOMIAL_4567 -> LiftLaw.POLYNOMIAL_4567;
        };
    }
}
