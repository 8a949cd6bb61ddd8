package gudgeon.rebuild.bore;

import gudgeon.mechanics.bore.CleansUp;
import gudgeon.mechanics.bore.WornBore;
import gudgeon.mechanics.metrology.Budget;
import java.util.Locale;

/**
 * A piston that is to be had, and whether the bore finished for it is clean.
 *
 * @param name what it is, such as "+0.25 mm" or "'copy', in hand"
 * @param finishedMm least diameter that the bore would be finished to
 * @param cleansUp whether that leaves nothing of the old wall
 * @param sentence why, or why not
 */
public record Oversize(String name, double finishedMm, CleansUp cleansUp, String sentence) {
    /** Of a piston whose bore would be finished to so much at least. */
    public static Oversize of(String name, double finishedMm, WornBore.Least least) {
        CleansUp cleansUp = least.with(finishedMm);
        return new Oversize(name, finishedMm, cleansUp, sentence(finishedMm, cleansUp, least));
    }

    /** Whether it is proved to clean up, wherever the centre may have to be. */
    public boolean isProved() {
        return cleansUp == CleansUp.ON_ANY_CENTRE || cleansUp == CleansUp.ON_A_SHIFTED_CENTRE;
    }

    /** Whether the bore comes clean, in a few words. */
    public String words() {
        return switch (cleansUp) {
            case ON_ANY_CENTRE -> "cleans up";
            case ON_A_SHIFTED_CENTRE -> "cleans up on the worn centre";
            case UNPROVEN -> "unproven";
            case NO -> "does not clean up";
        };
    }

    private static String sentence(double finished, CleansUp cleansUp, WornBore.Least least) {
        return switch (cleansUp) {
            case ON_ANY_CENTRE -> mm(finished) + " cleans up wherever the wear is.";
            case ON_A_SHIFTED_CENTRE ->
                mm(finished) + " cleans up if the bar is centred on the worn bore where it is worst; on the old centre "
                        + mm(most(least.oldCentre())) + " may be needed.";
            case UNPROVEN ->
                mm(finished) + " is not proved to clean up: "
                        + mm(least.evenWear().value())
                        + " is the least if wear is the same on both sides, " + mm(most(least.shiftedCentre()))
                        + " with all wear on one side and the doubt of the readings.";
            case NO ->
                mm(finished) + " does not clean up: the least that can is "
                        + mm(least.evenWear().value()) + ", which is "
                        + mm(least.evenWear().value() - finished) + " more.";
        };
    }

    private static double most(Budget least) {
        return least.value() + 2 * least.standardUncertainty();
    }

    /** A length as a machinist reads it. */
    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.3f mm", mm);
    }
}
