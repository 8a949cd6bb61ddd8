package gudgeon.rebuild.book;

import java.util.function.UnaryOperator;

/**
 * A valve pocket in a crown.
 *
 * @param valve id of the valve it is cut for
 * @param diameter its diameter
 * @param depth along its own axis, from where that crosses the reference plane to the floor
 * @param offset distance of that crossing from the bore axis, along the azimuth
 * @param azimuth direction of offset and lean
 * @param tilt lean of its axis, positive when the upper end leans outward
 */
public record PocketEntry(String valve, Size diameter, Size depth, Size offset, Size azimuth, Size tilt) {
    PocketEntry each(UnaryOperator<Size> change) {
        return new PocketEntry(
                valve,
                change.apply(diameter),
                change.apply(depth),
                change.apply(offset),
                change.apply(azimuth),
                change.apply(tilt));
    }
}
