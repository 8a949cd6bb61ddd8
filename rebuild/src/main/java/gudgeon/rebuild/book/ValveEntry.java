package gudgeon.rebuild.book;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A valve.
 *
 * @param id its name in the book
 * @param kind inlet or exhaust
 * @param head diameter of its head
 * @param margin thickness of the head's cylindrical edge
 * @param offset distance from the bore axis of the point where the stem's axis meets the shut valve's face, along the azimuth
 * @param azimuth direction of offset and lean
 * @param tilt lean of the stem, positive when its upper end leans outward
 * @param recess how far the shut face sits above the head's joint face
 * @param clearance valve clearance
 * @param springTravel how far the valve may open before spring or guide stops it, if stated
 * @param lift what is known of its lift
 */
public record ValveEntry(
        String id,
        Kind kind,
        Size head,
        Size margin,
        Size offset,
        Size azimuth,
        Size tilt,
        Size recess,
        Size clearance,
        Optional<Size> springTravel,
        LiftEntry lift) {
    /** What passes the valve. */
    public enum Kind {
        INLET,
        EXHAUST
    }

    ValveEntry each(UnaryOperator<Size> change) {
        return new ValveEntry(
                id,
                kind,
                change.apply(head),
                change.apply(margin),
                change.apply(offset),
                change.apply(azimuth),
                change.apply(tilt),
                change.apply(recess),
                change.apply(clearance),
                springTravel.map(change),
                lift.each(change));
    }
}
