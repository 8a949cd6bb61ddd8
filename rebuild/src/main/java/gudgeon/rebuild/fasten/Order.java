package gudgeon.rebuild.fasten;

import gudgeon.mechanics.joint.HolePlace;
import gudgeon.mechanics.joint.TighteningOrder;
import gudgeon.rebuild.book.Joint.Shape;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * In what order a joint's fasteners are tightened.
 *
 * @param source who says so
 * @param holes its holes, the first to be tightened first
 * @param why how it was come by, a sentence
 */
public record Order(Source source, List<String> holes, String why) {
    public Order {
        holes = List.copyOf(holes);
    }

    /** Where an order comes from. */
    public enum Source {
        /** The maker's manual, by the book. */
        MAKER,
        /** Worked out from where the holes lie. */
        COMPUTED,
        /** As the book lists them, for want of anything better. */
        LISTED
    }

    /** The order for a joint. The maker's wins over one that is worked out. */
    public static Order of(JointNow joint) {
        List<String> ids = joint.holes().stream().map(HoleNow::id).toList();
        if (!joint.book().sequence().isEmpty()) {
            List<String> order = new ArrayList<>(joint.book().sequence());
            ids.stream().filter(id -> !order.contains(id)).forEach(order::add);
            return new Order(Source.MAKER, order, "This is the maker's order.");
        }
        String words = joint.book().order().isEmpty()
                ? ""
                : " The book says: " + joint.book().order();
        List<HolePlace> places = places(joint);
        if (ids.size() < 3 || places.size() < ids.size()) {
            return new Order(Source.LISTED, ids, listed(ids.size()) + words);
        }
        boolean ring = joint.book().shape().filter(shape -> shape == Shape.RING).isPresent();
        List<Integer> order = ring ? TighteningOrder.ring(places) : TighteningOrder.outwards(places);
        return new Order(
                Source.COMPUTED,
                order.stream().map(ids::get).toList(),
                (ring
                                ? "Worked out: across the ring, then halfway between, by the cross pattern of ASME PCC-1."
                                : "Worked out: from the middle outwards, each next one across from the last.")
                        + words);
    }

    private static String listed(int holes) {
        return holes < 3
                ? "In turn, a little at a time."
                : "Not every hole is mapped, so no order is worked out and they stand as the book lists them.";
    }

    private static List<HolePlace> places(JointNow joint) {
        return joint.holes().stream()
                .flatMap(hole -> hole.at().stream())
                .map(at -> new HolePlace(at.x(), at.y()))
                .collect(Collectors.toList());
    }

    /** The order for loosening: the same backwards, so that a cover apt to warp is let go from the outside inwards. */
    public List<String> loosening() {
        List<String> backwards = new ArrayList<>(holes);
        Collections.reverse(backwards);
        return List.copyOf(backwards);
    }
}
