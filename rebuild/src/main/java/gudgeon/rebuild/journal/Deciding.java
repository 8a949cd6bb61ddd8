package gudgeon.rebuild.journal;

import java.util.Map;
import java.util.Optional;

/** Whole ways to go on, of which one is taken. */
public sealed interface Deciding extends Fact {
    /** The option's name in the build, unique. */
    String option();

    @Override
    default String about() {
        return option();
    }

    /**
     * A way to go on was thought of.
     *
     * @param option its short name, unique in the build
     * @param name what it is, in words
     * @param why what speaks for it or against
     */
    record OptionDrawn(String option, String name, String why) implements Deciding {}

    /**
     * What an option does at one position; said again of the same position, the later counts.
     *
     * @param position the position
     * @param what what is done or bought
     * @param origin where a part for it comes from; empty where the part that is there stays
     * @param family the engine of the family whose part it is, by its id in the book; may be empty
     * @param price what it costs, with its currency; may be empty
     * @param days how long it takes to come or to be done, if that is known
     * @param sizes sizes it has or will have, by the id of the book's dimension, as written
     */
    record OptionLine(
            String option,
            String position,
            String what,
            Optional<Origin> origin,
            String family,
            String price,
            Optional<Days> days,
            Map<String, String> sizes)
            implements Deciding {
        public OptionLine {
            sizes = Map.copyOf(sizes);
        }
    }

    /** This is the way that is gone. */
    record OptionTaken(String option, String why) implements Deciding {}

    /** This way is not gone. */
    record OptionDropped(String option, String why) implements Deciding {}
}
