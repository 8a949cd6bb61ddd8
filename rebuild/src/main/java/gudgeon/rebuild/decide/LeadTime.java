package gudgeon.rebuild.decide;

import gudgeon.rebuild.journal.Days;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Optional;

/**
 * How long an option's parts and work take, in calendar days from the day on which all of it is ordered.
 *
 * @param days from the quickest to the slowest; empty where nothing has to come or nothing is known
 * @param unknown names of what nobody said the days of
 */
public record LeadTime(Optional<Days> days, List<String> unknown) {
    public LeadTime {
        unknown = List.copyOf(unknown);
    }

    /** As a person reads it. */
    public String sentence() {
        String missing = unknown.isEmpty() ? "" : "not said for " + Sentence.list(unknown);
        if (days.isEmpty()) {
            return unknown.isEmpty() ? "Nothing has to come." : Sentence.of(missing);
        }
        Days known = days.get();
        return "About " + Amount.of(known.likely(), "day") + ", " + known.least() + " to " + known.most()
                + (unknown.isEmpty() ? "." : "; " + missing + ".");
    }
}
