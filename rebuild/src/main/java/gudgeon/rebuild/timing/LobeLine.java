package gudgeon.rebuild.timing;

import gudgeon.mechanics.timing.Flanks;
import java.util.Optional;

/**
 * What was read of a valve at one lift, against the book.
 *
 * @param number number of the entry
 * @param liftMm the lift in mm
 * @param read where it passed that lift
 * @param bookCentreDeg half way between the book's flanks there, in degrees
 * @param book where the book has them, if it knows the shape of the lift
 */
public record LobeLine(long number, double liftMm, Flanks read, double bookCentreDeg, Optional<Flanks> book) {
    /** Crank degrees by which it is later than the book has it; negative is earlier. */
    public double lateDeg() {
        return read.centreDeg() - bookCentreDeg;
    }

    /** Crank degrees by which the valve is open longer than the book has it at this lift, where that is known. */
    public Optional<Double> longerDeg() {
        return book.map(booked -> read.durationDeg() - booked.durationDeg());
    }

    /** The reading in one sentence. */
    public String sentence() {
        return "At " + Angle.mm(liftMm) + ": opening " + Angle.fromCentre(read.opensDeg()) + ", closing "
                + Angle.fromCentre(read.closesDeg()) + ", so the middle is at " + Angle.text(read.centreDeg())
                + " and it stands open for " + Angle.text(read.durationDeg())
                + book.map(booked -> "; the book has " + Angle.fromCentre(booked.opensDeg()) + ", "
                                + Angle.fromCentre(booked.closesDeg()) + " and "
                                + Angle.text(booked.durationDeg()))
                        .orElse("; the book's middle is " + Angle.text(bookCentreDeg))
                + ". " + (Math.round(lateDeg() * 10) == 0 ? "In time." : Angle.late(lateDeg()) + ".");
    }
}
