package gudgeon.rebuild.bore;

import static gudgeon.rebuild.bore.Oversize.mm;

import gudgeon.mechanics.bore.FinishedBore;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.rebuild.book.Expect;
import java.util.Locale;

/**
 * What to ask a machinist for.
 *
 * @param piston name of the piston in hand
 * @param skirtMm its skirt as measured
 * @param bore the finished size
 */
public record Ask(String piston, Quantity skirtMm, FinishedBore bore) {
    /** Step in which a size is asked for. */
    private static final double STEP_MM = 0.005;
    /** What honing takes off the diameter after boring; repair manuals have 0.01 to 0.02 mm. */
    private static final double HONED_OFF_MM = 0.02;

    static Ask of(String piston, Quantity skirtMm, Expect clearance) {
        return new Ask(
                piston,
                skirtMm,
                FinishedBore.of(
                        skirtMm,
                        clearance.atLeast().orElseThrow(),
                        clearance.atMost().orElseThrow(),
                        STEP_MM));
    }

    /** The work in one sentence, to be handed over with barrel and piston. */
    public String work() {
        return String.format(
                Locale.ROOT,
                "Bore and hone to %s +%.3f / -0, measured at 20 °C, for the piston handed over with it (skirt %s).",
                mm(bore.leastMm()),
                bore.mostMm() - bore.leastMm(),
                mm(skirtMm.value()));
    }

    /** How far to go with the boring bar. */
    public String bored() {
        return "Bore to no more than " + mm(bore.boredMm(HONED_OFF_MM)) + " and leave the rest to the hone.";
    }
}
