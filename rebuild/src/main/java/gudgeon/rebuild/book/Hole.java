package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * A place that a fastener goes.
 *
 * @param id its name in the joint
 * @param at where it is, seen from outside
 * @param kind what holds there
 * @param thread its thread, such as M6 or M10x1.25; may be empty
 * @param strength strength class of its fastener, such as 8.8; may be empty
 * @param head what its head is like, may be empty
 * @param length length of its fastener under the head, in mm
 * @param stack what it clamps, cover, gasket and washers, in mm
 * @param depth usable depth of its thread, in mm
 * @param through whether it goes right through
 * @param dowel whether a dowel sits in it
 * @param behind what it opens into, where it goes through
 * @param room how far a fastener may stand through, in mm
 * @param into what its thread is cut in, such as aluminium; may be empty
 * @param leftHand whether its thread is left-handed
 * @param torque the maker's figure for this one, in N·m, where it differs from the joint's
 * @param note the writer's note, may be empty
 */
public record Hole(
        String id,
        Optional<Point> at,
        Kind kind,
        String thread,
        String strength,
        String head,
        Optional<Size> length,
        Optional<Size> stack,
        Optional<Size> depth,
        boolean through,
        boolean dowel,
        Optional<Space> behind,
        Optional<Size> room,
        String into,
        boolean leftHand,
        Optional<Size> torque,
        String note) {
    /** What holds in a hole. */
    public enum Kind {
        SCREW("screw"),
        STUD("stud and nut"),
        NUT("nut"),
        CASTLE_NUT("castle nut and split pin"),
        TAB_WASHER("nut with a tab washer");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The words as a person reads them. */
        public String words() {
            return words;
        }
    }
}
