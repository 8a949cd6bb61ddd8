package gudgeon.mechanics.clearance;

import gudgeon.mechanics.valvetrain.Lift;

/**
 * A valve as fitted: a disc on a leaning stem, and how it is lifted.
 *
 * @param headDiameterMm diameter of the head, greater than 0
 * @param marginMm thickness of the head's cylindrical edge, 0 or more
 * @param offsetMm distance from the bore axis, along the azimuth, of the point where the stem's axis meets the shut valve's face
 * @param azimuthDeg direction of the offset and of the lean, from +x towards +y
 * @param tiltDeg lean of the stem, positive when its upper end leans outward along the azimuth; within -60 to 60
 * @param recessMm how far the shut face sits above the head's joint face, positive into the head
 * @param lift lift along the stem over the crank angle
 */
public record Valve(
        double headDiameterMm,
        double marginMm,
        double offsetMm,
        double azimuthDeg,
        double tiltDeg,
        double recessMm,
        Lift lift) {
    public Valve {
        if (!(headDiameterMm > 0)
                || !(marginMm >= 0)
                || !(Math.abs(tiltDeg) <= 60)
                || !Double.isFinite(offsetMm + azimuthDeg + recessMm)) {
            throw new IllegalArgumentException(
                    "a valve needs a head diameter above 0, a margin of 0 or more and a tilt within 60"
                            + " degrees, got diameter " + headDiameterMm + " mm, margin " + marginMm + " mm, tilt "
                            + tiltDeg + " degrees");
        }
    }
}
