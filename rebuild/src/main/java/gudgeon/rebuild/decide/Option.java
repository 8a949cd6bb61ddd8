package gudgeon.rebuild.decide;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Deciding;
import gudgeon.rebuild.journal.Deciding.OptionDrawn;
import gudgeon.rebuild.journal.Deciding.OptionDropped;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A whole way to go on, as the journal tells it.
 *
 * @param id its short name, unique in the build
 * @param name what it is, in words
 * @param why what was said for it or against when it was drawn last
 * @param lines what it does, position by position, in the order in which they were first told
 * @param state whether it was taken or dropped
 * @param said why it was, may be empty
 */
public record Option(String id, String name, String why, List<OptionLine> lines, State state, String said) {
    /** What came of an option. */
    public enum State {
        OPEN("not decided"),
        TAKEN("taken"),
        DROPPED("dropped");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }

    public Option {
        lines = List.copyOf(lines);
    }

    /** The options of a build, in the order in which they were first told. */
    public static List<Option> of(Build build) {
        Map<String, Option> options = new LinkedHashMap<>();
        for (Told<Deciding> told : build.told(Deciding.class)) {
            Deciding fact = told.fact();
            options.merge(fact.option(), new Option(fact), (before, unused) -> before);
            options.computeIfPresent(fact.option(), (id, option) -> option.after(fact));
        }
        return List.copyOf(options.values());
    }

    /** One of which nothing was said but that it is there. */
    private Option(Deciding first) {
        this(first.option(), first.option(), "", List.of(), State.OPEN, "");
    }

    private Option after(Deciding fact) {
        if (fact instanceof OptionDrawn drawn) {
            return new Option(id, drawn.name().isEmpty() ? id : drawn.name(), drawn.why(), lines, State.OPEN, "");
        }
        if (fact instanceof OptionLine line) {
            return new Option(id, name, why, with(line), state, said);
        }
        if (fact instanceof OptionTaken taken) {
            return new Option(id, name, why, lines, State.TAKEN, taken.why());
        }
        return new Option(id, name, why, lines, State.DROPPED, ((OptionDropped) fact).why());
    }

    /** Of two lines of one position the later counts, at the place of the first. */
    private List<OptionLine> with(OptionLine line) {
        List<OptionLine> all = new ArrayList<>(lines);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).position().equals(line.position())) {
                all.set(i, line);
                return all;
            }
        }
        all.add(line);
        return all;
    }
}
