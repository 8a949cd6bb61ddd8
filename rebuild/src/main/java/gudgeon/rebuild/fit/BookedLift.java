package gudgeon.rebuild.fit;

import gudgeon.mechanics.valvetrain.Lift;
import gudgeon.rebuild.book.LiftEntry;
import gudgeon.rebuild.book.Size;
import gudgeon.rebuild.book.ValveEntry;

/** A valve's lift as the book has it, every size at its best estimate. */
public final class BookedLift {
    private BookedLift() {}

    /** The lift over the crank angle; where only opening and closing are known, the fullest that they allow. */
    public static Lift of(ValveEntry valve) {
        return new ValveLift(valve, valve.clearance().value(), 0).lift(Size::value, false);
    }

    /** Whether the shape between opening and closing is known. */
    public static boolean shapeIsKnown(ValveEntry valve) {
        return !(valve.lift() instanceof LiftEntry.Events);
    }
}
