package gudgeon.rebuild.bore;

import static gudgeon.rebuild.bore.Oversize.mm;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.build.Build;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The clearance of the piston that is to go in, in the bore as it was measured.
 *
 * @param piston name of the piston; empty for the one that came off
 * @param clearance in mm, least bore less largest skirt
 * @param wanted what the book wants of new parts
 * @param bore number of the entry that told the bore last
 * @param skirt number of the entry that told the skirt last
 */
public record PistonClearance(String piston, Quantity clearance, Expect wanted, long bore, long skirt) {
    /** What a subtraction of two sizes may be out by; no gauge tells it. */
    private static final double NOTHING_MM = 1e-9;

    /** Empty until both are measured, or where the book does not say what is wanted. */
    public static Optional<PistonClearance> of(Build build, BoreDimensions dimensions) {
        List<Gauged> bore = Gauged.all(build, dimensions.bore());
        List<Gauged> skirt = Gauged.all(build, dimensions.skirt());
        Comparator<Gauged> bySize =
                Comparator.comparingDouble(reading -> reading.size().value());
        String piston = Gauged.part(build, dimensions.piston().id());
        return dimensions
                .wanted()
                .flatMap(wanted -> bore.stream()
                        .min(bySize)
                        .flatMap(least -> skirt.stream()
                                .max(bySize)
                                .map(largest -> new PistonClearance(
                                        piston, least.size().minus(largest.size()), wanted, last(bore), last(skirt)))));
    }

    private static long last(List<Gauged> readings) {
        return readings.stream().mapToLong(Gauged::number).max().orElse(0);
    }

    /** Whether it is less than wanted. */
    public boolean isTight() {
        return clearance.value() < wanted.atLeast().orElseThrow() - NOTHING_MM;
    }

    /** Whether it is more than wanted. */
    public boolean isLoose() {
        return clearance.value() > wanted.atMost().orElseThrow() + NOTHING_MM;
    }

    /** What it is and what is wanted, a sentence. */
    public String sentence() {
        String which = piston.isEmpty() ? "the piston that came off" : "the piston '" + piston + "'";
        String doubt = clearance.standardUncertainty() > 0
                ? String.format(Locale.ROOT, " ± %.3f", 2 * clearance.standardUncertainty())
                : "";
        return "The bore leaves " + which + " a clearance of "
                + mm(clearance.value()).replace(" mm", doubt + " mm") + ", where " + wanted.words() + " is wanted.";
    }
}
