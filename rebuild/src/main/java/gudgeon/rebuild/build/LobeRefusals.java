package gudgeon.rebuild.build;

import gudgeon.mechanics.valvetrain.LiftEvents;
import gudgeon.rebuild.book.TypedAngle;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import gudgeon.rebuild.book.ValveEntry;
import gudgeon.rebuild.fit.BookedLift;
import gudgeon.rebuild.journal.Proving.LobeRead;
import java.util.OptionalDouble;

/** Why a reading of a valve by the degree disc can't be taken down as it stands. */
record LobeRefusals(ValveEntry valve, Refusals refusals) {
    void look(LobeRead read) {
        if (!read.lift().isBlank()) {
            lift(read.lift());
        }
        OptionalDouble opens = angle("opening", read.opening(), true);
        OptionalDouble closes = angle("closing", read.closing(), false);
        if (opens.isPresent() && closes.isPresent() && closes.getAsDouble() <= opens.getAsDouble()) {
            refusals.refuse(
                    "The " + valve.id() + " valve opens at " + read.opening() + " and closes at " + read.closing()
                            + ": it would close before it opens. See whether the two are exchanged, and look at the letters btdc, atdc,"
                            + " bbdc, abdc.");
        }
    }

    private void lift(String text) {
        if (!(TypedSize.of(Unit.MM, text, 1) instanceof TypedSize.Read lift)) {
            refusals.refuse("'" + text + "' is no lift. Write it as 1.0 mm or 40 thou.");
            return;
        }
        double greatest = LiftEvents.of(BookedLift.of(valve), 0).greatestMm();
        if (!(lift.value() > 0 && lift.value() < greatest)) {
            refusals.refuse("The " + valve.id() + " valve's greatest lift is " + Unit.MM.figure(greatest)
                    + " in the book, so nothing can be read of its flanks at " + text
                    + ". Take a lift above 0 and well below that, such as 1.0 mm.");
        }
    }

    private OptionalDouble angle(String which, String text, boolean opens) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        TypedAngle angle = TypedAngle.of(text);
        if (angle instanceof TypedAngle.Refused refused) {
            refusals.refuse("The angle " + which + ": " + refused.sentence());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(angle.crankDeg(valve.kind(), opens));
    }
}
