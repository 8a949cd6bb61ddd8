package gudgeon.rebuild.journal;

import java.util.List;
import java.util.OptionalDouble;

/** What was felt, read and tried in looking for a fault. */
public sealed interface Finding extends Fact {
    /** What every entry about how the engine seals is about. */
    String SEALING = "sealing";

    /** Of one hunt: one run of questions about one trouble. */
    sealed interface OfHunt extends Finding {
        /** The hunt's id, the person's own or made by the page. */
        String hunt();

        @Override
        default String about() {
            return hunt();
        }
    }

    /**
     * The search for a fault was begun.
     *
     * @param what what is wrong, in the person's words; may be empty
     */
    record HuntOpened(String hunt, Trouble trouble, String what) implements OfHunt {}

    /**
     * Turning the crank by hand one way, it went tight.
     *
     * @param angleDeg crank angle from firing top dead centre, in degrees in [0, 720)
     * @param doubtDeg standard uncertainty of the angle in degrees, above 0
     * @param strokeKnown whether it is known which of the two turns of a cycle it was; if not, only the angle within one turn counts
     * @param felt what was felt, in the person's words; may be empty
     */
    record TightFelt(
            String hunt,
            Turning direction,
            double angleDeg,
            double doubtDeg,
            boolean strokeKnown,
            Recurs recurs,
            String felt)
            implements OfHunt {}

    /**
     * A test was made.
     *
     * @param test its id among the tests for that trouble
     * @param answer which of its answers came
     */
    record Tried(String hunt, String test, String answer, String remark) implements OfHunt {}

    /** This suspect is to be looked at. */
    record SuspectTaken(String hunt, String suspect, String why) implements OfHunt {}

    /**
     * The fault was found, or the search given up.
     *
     * @param suspect which suspect it was; empty for none of them
     * @param what what was found
     */
    record HuntClosed(String hunt, String suspect, String what) implements OfHunt {}

    /** About how the engine seals, whether anything is wrong or not. */
    sealed interface OfSealing extends Finding {
        @Override
        default String about() {
            return SEALING;
        }
    }

    /**
     * The pressure that cranking made.
     *
     * @param pressure above the air's, with its unit: "8.5 bar"
     * @param throttleOpen whether the throttle was held wide open
     * @param altitudeM height above the sea in m; empty where nobody said
     */
    record PressureRead(Cranking how, String pressure, boolean throttleOpen, OptionalDouble altitudeM, String remark)
            implements OfSealing {}

    /**
     * What leaked away with air let in at firing top dead centre.
     *
     * @param loss share of the pressure that was lost: "12 %"
     * @param out where the air was heard to come out; empty where nobody listened
     */
    record LeakDownRead(String loss, List<LeakPath> out, String remark) implements OfSealing {
        public LeakDownRead {
            out = List.copyOf(out);
        }
    }
}
