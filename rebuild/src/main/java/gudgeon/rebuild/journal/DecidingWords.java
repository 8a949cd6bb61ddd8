package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;
import static gudgeon.rebuild.journal.Naming.with;

import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;

/** What an entry about options says. */
record DecidingWords(Naming naming) {
    String sentence(Deciding fact) {
        String option = "option '" + fact.option() + "'";
        if (fact instanceof OptionDrawn drawn) {
            return "Thought of " + option + with(": ", drawn.name()) + "." + and(drawn.why());
        }
        if (fact instanceof OptionLine line) {
            return "With " + option + ", " + naming.name(line.position()) + with(": ", line.what())
                    + line.origin().map(origin -> ", " + origin.words()).orElse("")
                    + with(", from ", naming.name(line.family())) + with(", ", line.price())
                    + SourcingWords.days(line.days())
                    + with(", with ", naming.dimensions(line.sizes())) + ".";
        }
        return fact instanceof OptionTaken taken
                ? "Taken: " + option + "." + and(taken.why())
                : "Dropped: " + option + "." + and(((Deciding.OptionDropped) fact).why());
    }
}
