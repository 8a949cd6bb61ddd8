package gudgeon.rebuild.decide;

import gudgeon.mechanics.clearance.Verdict;
import java.util.Locale;
import java.util.Optional;

/**
 * One figure of the engine with an option, so that options stand side by side.
 *
 * @param key stable name, the same for every option
 * @param label what a fitter calls it
 * @param unit its unit, empty for a ratio
 * @param low the figure, or the lower end where it is a range
 * @param high the figure again, or the upper end of the range
 * @param expanded its expanded uncertainty, about 95 %
 * @param verdict of a gap: whether it clears what is wanted
 */
public record OptionFigure(
        String key, String label, String unit, double low, double high, double expanded, Optional<Verdict> verdict) {
    /** As a person reads it, such as "98.2 ± 0.3 cm³" or "1.00 to 1.40 mm". */
    public String words() {
        String figure = low == high ? number(low) : number(low) + " to " + number(high);
        return figure
                + (number(expanded).matches("0(\\.0*)?") ? "" : " ± " + number(expanded))
                + (unit.isEmpty() ? "" : " " + unit);
    }

    /** What can be said of a gap, in words; empty for another figure. */
    public String verdictWords() {
        return verdict.map(found -> switch (found) {
                    case CLEARS -> "clears";
                    case CLOSE -> "close";
                    case TOUCHES -> "touches";
                    case UNPROVEN -> "unproven";
                })
                .orElse("");
    }

    private String number(double value) {
        int decimals = switch (unit) {
            case "kPa" -> 0;
            case "cm³", "m/s" -> 1;
            default -> 2;
        };
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        // no minus before nothing
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
