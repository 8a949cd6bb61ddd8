package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.timing.Flanks;
import gudgeon.mechanics.valvetrain.Lift;
import gudgeon.mechanics.valvetrain.LiftEvents;
import gudgeon.rebuild.book.LiftEntry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.fit.BookedLift;
import java.util.Optional;

/** Where the book has a valve's flanks. */
final class BookedLobe {
    /** A longer or shorter opening is spoken of from here on: common practice, no source. */
    static final double NOTICE_LONGER_DEG = 6;

    private static final double SAME_MM = 1e-6;
    private static final double CYCLE_DEG = 720;

    private BookedLobe() {}

    /** The book's greatest lift of a valve in mm. */
    static double greatestMm(ValveEntry valve) {
        return LiftEvents.of(BookedLift.of(valve), 0).greatestMm();
    }

    /**
     * Where a valve passes a lift.
     *
     * @return empty where only opening and closing are known, and not at this lift
     */
    static Optional<Flanks> flanks(ValveEntry valve, double liftMm) {
        if (valve.lift() instanceof LiftEntry.Events events
                && Math.abs(events.at().value() - liftMm) > SAME_MM) {
            return Optional.empty();
        }
        return Optional.of(flanks(BookedLift.of(valve), liftMm));
    }

    /** Half way between the flanks at a lift, in degrees from firing top dead centre. */
    static double centreDeg(ValveEntry valve, double liftMm) {
        return flanks(valve, liftMm)
                .or(() -> flanks(valve, ((LiftEntry.Events) valve.lift()).at().value()))
                .orElseThrow()
                .centreDeg();
    }

    private static Flanks flanks(Lift lift, double liftMm) {
        LiftEvents events = LiftEvents.of(lift, liftMm);
        double closes = events.closesDeg() > events.opensDeg() ? events.closesDeg() : events.closesDeg() + CYCLE_DEG;
        return new Flanks(events.opensDeg(), closes);
    }

    /** 0 with the doubt in degrees that the book leaves of its lobe's centre. */
    static Quantity centreDoubt(ValveEntry valve) {
        if (valve.lift() instanceof LiftEntry.Table table) {
            return table.centre().map(BookedLobe::doubt).orElse(Quantity.exact(0));
        }
        if (valve.lift() instanceof LiftEntry.Law law) {
            return doubt(law.centre());
        }
        LiftEntry.Events events = (LiftEntry.Events) valve.lift();
        return doubt(events.opens()).plus(doubt(events.closes())).times(0.5);
    }

    private static Quantity doubt(Size size) {
        return new Quantity(0, size.quantity().doubts());
    }
}
