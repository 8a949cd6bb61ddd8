package gudgeon.rebuild.book;

import gudgeon.mechanics.limits.Bearing;
import gudgeon.mechanics.limits.Fit;
import gudgeon.mechanics.limits.UnknownDesignation;
import java.util.Optional;

/** Tells what can't be right of the fits and bearings in a book. */
final class SeatFaults {
    private final Faults faults;

    SeatFaults(Faults faults) {
        this.faults = faults;
    }

    /** Tells what can't be right at one position, and an unlisted bearing, which may be right. */
    void tell(Position position) {
        Optional<Fit> fit = position.seatFit().flatMap(seat -> fit(position, seat));
        position.seatFit().ifPresent(seat -> {
            material(position, seat.part(), seat.partMaterial().isPresent());
            material(position, seat.into(), seat.intoMaterial().isPresent());
        });
        if (!position.bearing().isEmpty()) {
            bearing(position).ifPresent(bearing -> fit.ifPresent(seat -> outside(position, bearing, seat)));
        }
    }

    private Optional<Fit> fit(Position position, SeatFit seat) {
        try {
            return Optional.of(Fit.of(seat.size()));
        } catch (UnknownDesignation unknown) {
            faults.fault(
                    position.where(),
                    at(position, "fit"),
                    String.join(" ", unknown.sentences()),
                    "Write size, hole and part as ISO 286 does, such as 42 N7/h6.");
            return Optional.empty();
        }
    }

    private void material(Position position, String said, boolean known) {
        if (!known) {
            faults.fault(
                    position.where(),
                    at(position, "fit"),
                    "No material is called '" + Words.shortened(said) + "' here.",
                    "Write one of these: " + String.join(", ", SeatFit.materials()) + ".");
        }
    }

    private Optional<Bearing> bearing(Position position) {
        try {
            return Optional.of(Bearing.of(position.bearing()));
        } catch (UnknownDesignation unknown) {
            faults.doubt(
                    position.where(),
                    at(position, "bearing"),
                    String.join(" ", unknown.sentences()),
                    "Look at the number on the ring; one that is in no table stays as it is.");
            return Optional.empty();
        }
    }

    private void outside(Position position, Bearing bearing, Fit fit) {
        if (bearing.outsideMm() != fit.hole().sizeMm()) {
            faults.doubt(
                    position.where(),
                    at(position, "bearing"),
                    "A " + bearing.number() + " is " + bearing.outsideMm() + " mm outside, and the fit is of "
                            + Words.number(fit.hole().sizeMm()) + " mm.",
                    "Compare the number on the ring with the size of its seat.");
        }
    }

    private static String at(Position position, String key) {
        return "positions." + position.id() + "." + key;
    }
}
