package gudgeon.rebuild.journal;

import gudgeon.rebuild.book.Lubrication;
import gudgeon.rebuild.book.Point;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What was done and found of fasteners, joints and wrenches. Lengths and torques are as written, with their unit. */
public sealed interface Fastening extends Fact {
    /** What every entry about wrenches is about. */
    String WRENCHES = "wrenches";
    /** What every entry about the heap of fasteners is about. */
    String PILE = "pile";

    /** About a joint. */
    sealed interface OfJoint extends Fastening {
        /** The joint's id. */
        String joint();

        @Override
        default String about() {
            return joint();
        }
    }

    /**
     * Where a joint's holes lie.
     *
     * @param outline corners of its outline; may be empty
     * @param holes where each hole is, by its id
     * @param how how they were found: by numbers, or from which photo and how well it fits
     */
    record JointMapped(String joint, List<Point> outline, Map<String, Point> holes, String how) implements OfJoint {
        public JointMapped {
            outline = List.copyOf(outline);
            holes = Map.copyOf(holes);
        }
    }

    /**
     * What was measured of a hole; an empty text leaves the book's figure as it is.
     *
     * @param thread its thread
     * @param stack what its fastener clamps
     * @param depth usable depth of its thread
     * @param into what its thread is cut in
     */
    record HoleMeasured(String joint, String hole, String thread, String stack, String depth, String into)
            implements OfJoint {}

    /** This fastener came out of that hole. */
    record FastenerOut(String joint, String hole, String thread, String length, String head, String remark)
            implements OfJoint {}

    /**
     * So many of a kind lie in the heap; said again of the same kind, the later counts.
     *
     * @param kind the person's name for the kind
     * @param count how many, 0 or more
     */
    record Piled(String kind, String thread, String length, String head, String strength, int count, String remark)
            implements Fastening {
        @Override
        public String about() {
            return PILE;
        }
    }

    /** This fastener is for that hole. */
    record HoleGiven(String joint, String hole, String kind, String thread, String length, String head, String remark)
            implements OfJoint {}

    /**
     * A torque wrench of the person's, as it is from now on.
     *
     * @param wrench its name, the person's own
     * @param range what its scale spans: "5 to 25 N.m"
     * @param step the least step of its scale
     * @param errorPercent by how much of the reading it may err, in percent; empty where that is not known
     */
    record WrenchKept(String wrench, String range, String step, OptionalDouble errorPercent, String remark)
            implements Fastening {
        @Override
        public String about() {
            return WRENCHES;
        }
    }

    /** What is on the threads of a joint. */
    record Lubricated(String joint, Lubrication how) implements OfJoint {}

    /**
     * A wrench was taken for a joint and set.
     *
     * @param setting what it was set to; may be empty as long as it is not set
     * @param adapterMm length that an adapter adds between drive and fastener, in mm; empty without one
     * @param adapterDeg angle of the adapter to the wrench's arm, in degrees; empty for one in line
     * @param armMm length of the wrench from its drive to the middle of its grip, in mm; empty where nobody measured it
     */
    record WrenchChosen(
            String joint,
            String wrench,
            String setting,
            OptionalDouble adapterMm,
            OptionalDouble adapterDeg,
            OptionalDouble armMm,
            String remark)
            implements OfJoint {}

    /**
     * A fastener was tightened.
     *
     * @param pass in which pass, from 1
     * @param torque to what; may be empty for "by hand"
     */
    record Tightened(String joint, String hole, int pass, String torque, String wrench, String remark)
            implements OfJoint {}

    /** The fasteners of a joint were loosened, so that tightening begins anew. */
    record Loosened(String joint, String why) implements OfJoint {}

    /** Fastener and part were marked across, so that a turn shows. */
    record WitnessMarked(String joint, List<String> holes) implements OfJoint {
        public WitnessMarked {
            holes = List.copyOf(holes);
        }
    }

    /** A joint was tightened again, as after the first heat. */
    record TightenedAgain(String joint, String torque, String remark) implements OfJoint {}
}
