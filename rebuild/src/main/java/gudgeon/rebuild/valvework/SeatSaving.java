package gudgeon.rebuild.valvework;

import gudgeon.mechanics.metrology.Expanded;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.build.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a seat that does not seal can be saved by grinding the valve in, by cutting, or not, as far as its width and the height of
 * the stem tell. How deep its pits are is for the eye: grinding takes off so little that it is stated with the verdict.
 *
 * @param seat the seat
 * @param way what can be done
 * @param reasons why, sentences
 */
public record SeatSaving(ValveSeat seat, Way way, List<String> reasons) {
    /** What grinding-in takes off at most, along the stem, before it hollows the face, in mm: common practice, no source. */
    static final double GROUND_MM = 0.05;
    /** The least that a cutter takes to clean a seat up, along the stem, in mm: common practice, no source. */
    static final double LEAST_CUT_MM = 0.1;

    public SeatSaving {
        reasons = List.copyOf(reasons);
    }

    /** What can be done with a seat. */
    public enum Way {
        GRIND("grinding-in may do"),
        CUT("it wants cutting"),
        NOT("neither grinding nor cutting saves it"),
        UNPROVEN("unproven");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    /** That of every seat whose width the book knows. */
    public static List<SeatSaving> all(Build build) {
        return ValveSeat.all(build).stream().map(SeatSaving::of).toList();
    }

    private static SeatSaving of(ValveSeat seat) {
        List<String> reasons = new ArrayList<>();
        OptionalDouble widest = seat.width().expect().map(span -> span.atMost()).orElse(OptionalDouble.empty());
        if (seat.widest().isEmpty() || widest.isEmpty() || seat.mayRiseMm().isEmpty()) {
            reasons.add(
                    "Measure the width of the seat and the height of the stem above its spring seat; the book must have a"
                            + " limit for both.");
            return new SeatSaving(seat, Way.UNPROVEN, reasons);
        }
        double left = seat.mayRiseMm().get();
        Quantity width = seat.widest().get();
        double doubt = Expanded.of(width).halfWidth();
        reasons.add(String.format(
                Locale.ROOT,
                "The seat is %.2f ± %.2f mm wide, at most %.2f mm is allowed; the stem may rise %.2f mm more.",
                width.value(),
                doubt,
                widest.getAsDouble(),
                left));
        if (left < GROUND_MM) {
            reasons.add("The valve has sunk as far as it may: a seat ring, another valve or another head.");
            return new SeatSaving(seat, Way.NOT, reasons);
        }
        if (width.value() - doubt > widest.getAsDouble()) {
            return tooWide(seat, left, reasons);
        }
        if (width.value() + doubt > widest.getAsDouble()) {
            reasons.add("Whether it is too wide is unproven: measure it better before anything is taken off.");
            return new SeatSaving(seat, Way.UNPROVEN, reasons);
        }
        reasons.add(String.format(
                Locale.ROOT,
                "Pits that go away within %.2f mm can be ground out (common practice, no source); one that a fingernail catches wants"
                        + " a cut, which takes %.1f mm at least.",
                GROUND_MM,
                LEAST_CUT_MM));
        return new SeatSaving(seat, Way.GRIND, reasons);
    }

    private static SeatSaving tooWide(ValveSeat seat, double left, List<String> reasons) {
        if (left < LEAST_CUT_MM) {
            reasons.add(String.format(
                    Locale.ROOT,
                    "It is too wide, and a cutter takes %.1f mm at least (common practice, no source), more than is left.",
                    LEAST_CUT_MM));
            return new SeatSaving(seat, Way.NOT, reasons);
        }
        reasons.add("It is too wide: grinding widens it more. Narrow it with the outer and inner cuts, guides first.");
        return new SeatSaving(seat, Way.CUT, reasons);
    }

    /** The verdict with its reasons. */
    public String sentence() {
        return seat.valve().name() + ": " + way.words() + ". " + String.join(" ", reasons);
    }

    /** That of the seat of a valve's position. */
    public static Optional<SeatSaving> of(Build build, String valve) {
        return all(build).stream()
                .filter(saving -> saving.seat().valve().id().equals(valve))
                .findFirst();
    }
}
