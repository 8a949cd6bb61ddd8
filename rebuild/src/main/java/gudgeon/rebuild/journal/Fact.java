package gudgeon.rebuild.journal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person did or found. Ids of positions, steps and checks are those of the engine book. Texts may be empty where nothing was
 * said. Immutable.
 */
public sealed interface Fact
        permits Fact.OfPosition,
                Fact.OfStep,
                Fact.OfCheck,
                Fact.OfAnything,
                Fact.Started,
                Fact.BookChanged,
                Fact.FaultFound,
                Fact.WentTight,
                Fact.ChanceTaken,
                Fact.Corrected,
                Measuring,
                Sourcing,
                Deciding,
                Fastening,
                Finding,
                Proving,
                Handing {
    /**
     * The id of the position, step, check, part, order or entry that it is about; empty where it is about the build as a whole.
     * Two facts about one thing can contradict each other.
     */
    String about();

    /** About the part or the place of a position. */
    non-sealed interface OfPosition extends Fact {
        /** The position's id. */
        String position();

        @Override
        default String about() {
            return position();
        }
    }

    /** About a step. */
    sealed interface OfStep extends Fact {
        /** The step's id. */
        String step();

        @Override
        default String about() {
            return step();
        }
    }

    /** About a check. */
    sealed interface OfCheck extends Fact {
        /** The check's id. */
        String check();

        @Override
        default String about() {
            return check();
        }
    }

    /** About anything in the book, or the build as a whole. */
    sealed interface OfAnything extends Fact {
        /** The id of the position, step, check or part; empty for the build as a whole. */
        String on();

        @Override
        default String about() {
            return on();
        }
    }

    /**
     * The rebuild was begun.
     *
     * @param engine the engine's name or number, as the person calls it
     * @param book content hash of the engine book
     * @param found whether it was found together or in pieces
     */
    record Started(String engine, String book, Found found) implements Fact {
        @Override
        public String about() {
            return "";
        }
    }

    /**
     * The engine book was changed.
     *
     * @param book content hash of the new text
     * @param why why
     */
    record BookChanged(String book, String why) implements Fact {
        @Override
        public String about() {
            return "book";
        }
    }

    /**
     * A part came off at strip-down.
     *
     * @param position where it sat
     * @param count how many, from 1
     * @param bag the bag or tray it lies in
     * @param place where the bag is kept
     * @param remark what was seen
     */
    record TakenOff(String position, int count, String bag, String place, String remark) implements OfPosition {}

    /**
     * A part is in hand for a position, other than one that came off this engine here.
     *
     * @param part its name, unique in the build
     * @param position what it is for
     * @param origin where it comes from
     * @param count how many, from 1
     * @param family the engine of the family that it is from, by its id in the book; empty for one made for this engine
     * @param price what it cost, with its currency, where it was not ordered here; may be empty
     * @param remark maker's mark, condition
     */
    record PartEntered(
            String part, String position, Origin origin, int count, String family, String price, String remark)
            implements OfPosition {
        /** A part made for this engine, of whose price nothing was said. */
        public PartEntered(String part, String position, Origin origin, int count, String remark) {
            this(part, position, origin, count, "", "", remark);
        }
    }

    /**
     * Sizes of a part were measured.
     *
     * @param position the position whose part it is
     * @param part the part entered for it; empty for the one that came off
     * @param sizes by the key that the book's figures have for it, such as {@code pockets.exhaust.depth}, as written with unit and
     *     doubt
     */
    record Measured(String position, String part, Map<String, String> sizes) implements OfPosition {
        public Measured {
            sizes = Map.copyOf(sizes);
        }
    }

    /**
     * A new part was held against the old one and the book.
     *
     * @param position the position it is for
     * @param part the part entered for it
     * @param what what was compared, in the book's words
     * @param agrees whether all of it agreed
     * @param remark what was seen
     */
    record Compared(String position, String part, List<String> what, boolean agrees, String remark)
            implements OfPosition {
        public Compared {
            what = List.copyOf(what);
        }
    }

    /** A part was cleaned. */
    record Cleaned(String position, Cleaning how, String remark) implements OfPosition {}

    /**
     * What is to become of a part.
     *
     * @param position the position whose part it is
     * @param part the part entered for it; empty for the one that came off
     */
    record Disposed(String position, String part, Disposition disposition, String why) implements OfPosition {}

    /** A step was begun. */
    record StepBegun(String step) implements OfStep {}

    /** A step is done. */
    record StepDone(String step, String remark) implements OfStep {}

    /** A step was stopped before it was done. */
    record StepStopped(String step, String why) implements OfStep {}

    /**
     * A part is in its place.
     *
     * @param position where
     * @param part the part entered for it; empty for the one that came off
     * @param count how many, from 1
     * @param way which way round it went in, where that matters
     * @param remark what was seen
     */
    record Fitted(String position, String part, int count, Way way, String remark) implements OfPosition {}

    /**
     * A check passed.
     *
     * @param reading what was read, with its unit, for a measured one
     */
    record CheckPassed(String check, String reading, String remark) implements OfCheck {}

    /**
     * A check failed.
     *
     * @param reading what was read, with its unit, for a measured one
     */
    record CheckFailed(String check, String reading, String remark) implements OfCheck {}

    /** Work goes on without a check, knowingly. */
    record CheckWaived(String check, String why) implements OfCheck {}

    /**
     * A step was undone: what it fitted is off again.
     *
     * @param toBuy positions whose part the undoing destroyed and that are now on the list to buy
     */
    record Undone(String step, String why, List<String> toBuy) implements OfStep {
        public Undone {
            toBuy = List.copyOf(toBuy);
        }
    }

    /**
     * A fault was found.
     *
     * @param at the position, step or check where it shows
     */
    record FaultFound(String at, String what) implements Fact {
        @Override
        public String about() {
            return at;
        }
    }

    /**
     * Turning the crank by hand, it went tight.
     *
     * @param forwardDeg crank angle turning forward, in degrees from firing top dead centre, in [0, 720)
     * @param backwardDeg the same turning backward
     */
    record WentTight(OptionalDouble forwardDeg, OptionalDouble backwardDeg, String remark) implements Fact {
        @Override
        public String about() {
            return "turning";
        }
    }

    /** A note. */
    record Noted(String on, String text) implements OfAnything {}

    /**
     * A photo.
     *
     * @param photo content hash of the picture
     */
    record Photographed(String on, String photo, String caption) implements OfAnything {}

    /** Time spent, in minutes, from 1. */
    record TimeSpent(String on, int minutes) implements OfAnything {}

    /** What chance the person gives a part of an origin to be wrong, from 0 to 1. */
    record ChanceTaken(Origin origin, double chance) implements Fact {
        @Override
        public String about() {
            return "chances";
        }
    }

    /**
     * An entry was wrong. It stays in the journal and no longer counts; what is true instead takes its place, at its time. A
     * correction that was wrong is corrected like any other entry.
     *
     * @param entry key of the entry
     * @param instead what is true instead, if anything
     */
    record Corrected(String entry, String why, Optional<Fact> instead) implements Fact {
        @Override
        public String about() {
            return entry;
        }
    }
}
