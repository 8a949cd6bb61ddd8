package gudgeon.rebuild.desk;

import gudgeon.mechanics.bore.RingGap;
import gudgeon.mechanics.metrology.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Answers about the gap between a piston ring's ends. */
public final class RingGapDesk {
    private static final double LARGEST_BORE_MM = 500;

    private RingGapDesk() {}

    /**
     * Tells the gap usual for a bore and, for a ring whose gap is known in one bore, its gap in another.
     *
     * @param boreMm the bore asked for, mm
     * @param fromGapMm a gap that was measured, mm
     * @param fromBoreMm the bore in which it was measured, mm
     */
    public static DeskAnswer answer(double boreMm, OptionalDouble fromGapMm, OptionalDouble fromBoreMm) {
        List<String> faults = faults(boreMm, fromGapMm, fromBoreMm);
        if (!faults.isEmpty()) {
            return new DeskAnswer.Refused(faults);
        }
        double least = RingGap.usualLeastMm(boreMm);
        double most = RingGap.usualMostMm(boreMm);
        List<DeskFigure> figures = new ArrayList<>(List.of(
                new DeskFigure("usualLeast", "least gap usual", least, DeskFigure.Unit.MM),
                new DeskFigure("usualMost", "most gap usual with new rings", most, DeskFigure.Unit.MM)));
        List<String> sentences = new ArrayList<>();
        String heading = "For a bore of " + DeskFigure.mm(boreMm) + " a gap of " + DeskFigure.mm(least) + " to "
                + DeskFigure.mm(most) + " is usual (common practice, no source).";
        if (fromGapMm.isPresent() && fromBoreMm.isPresent()) {
            double gap = RingGap.inBore(
                            Quantity.exact(fromGapMm.getAsDouble()),
                            Quantity.exact(fromBoreMm.getAsDouble()),
                            Quantity.exact(boreMm))
                    .value();
            figures.add(new DeskFigure(
                    "gap", "gap of this ring, below zero the ends would overlap", gap, DeskFigure.Unit.MM));
            sentences.add("A ring with a gap of " + DeskFigure.mm(fromGapMm.getAsDouble()) + " in "
                    + DeskFigure.mm(fromBoreMm.getAsDouble()) + " has " + DeskFigure.mm(gap) + " in "
                    + DeskFigure.mm(boreMm) + ": " + verdict(gap, least, most));
        }
        return new DeskAnswer.Told(
                heading,
                figures,
                sentences,
                List.of(
                        "The ring maker's gap comes first. Measure it with the ring square in the bore, below the worn part.",
                        "Rings are brittle and their edges cut: spread them no further than needed; file towards the inside, with eyes "
                                + "guarded."),
                List.of("A ring keeps its length, so its gap changes by pi times the change of the bore."));
    }

    private static String verdict(double gap, double least, double most) {
        if (gap <= 0) {
            return "its ends would meet and the ring seize; it does not go in as it is.";
        }
        if (gap < least) {
            return "less than usual; the ends may meet when hot, so they are filed back.";
        }
        return gap > most ? "more than is usual with new rings; a ring made for this bore is wanted." : "as is usual.";
    }

    private static List<String> faults(double boreMm, OptionalDouble gapMm, OptionalDouble fromBoreMm) {
        List<String> faults = new ArrayList<>();
        if (!bore(boreMm) || (fromBoreMm.isPresent() && !bore(fromBoreMm.getAsDouble()))) {
            faults.add("A bore is above 0 up to 500 mm.");
        }
        if (gapMm.isPresent() != fromBoreMm.isPresent()) {
            faults.add(
                    "A gap that was measured and the bore in which it was measured go together; give both or neither.");
        }
        if (gapMm.isPresent() && !(gapMm.getAsDouble() >= 0 && gapMm.getAsDouble() < LARGEST_BORE_MM)) {
            faults.add("A gap is 0 or more.");
        }
        return faults;
    }

    private static boolean bore(double mm) {
        return mm > 0 && mm <= LARGEST_BORE_MM;
    }
}
