package gudgeon.rebuild.decide;

import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import java.util.ArrayList;
import java.util.List;

/**
 * An option that nobody drew yet, ready to be taken up and then changed.
 *
 * @param option its short name
 * @param name what it is, in words
 * @param why where it comes from
 * @param lines what it does
 */
public record Draft(String option, String name, String why, List<OptionLine> lines) {
    public Draft {
        lines = List.copyOf(lines);
    }

    /** The facts that take it up. */
    public List<Deciding> facts() {
        List<Deciding> facts = new ArrayList<>();
        facts.add(new OptionDrawn(option, name, why));
        facts.addAll(lines);
        return facts;
    }
}
