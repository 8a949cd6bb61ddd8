package gudgeon.mechanics.chamber;

/**
 * A valve pocket: a right circular cylinder with a flat floor square to its own axis, which removes all metal above the floor.
 *
 * @param diameterMm diameter, greater than 0
 * @param depthMm depth along the pocket's own axis, from where that axis crosses the reference plane to the floor
 * @param offsetMm distance of that crossing point from the bore axis, along the azimuth
 * @param azimuthDeg direction of the offset and of the lean, from +x towards +y
 * @param tiltDeg lean of the axis, positive when its upper end leans outward along the azimuth; within -60 to 60
 */
public record Pocket(double diameterMm, double depthMm, double offsetMm, double azimuthDeg, double tiltDeg) {
    public Pocket {
        if (!(diameterMm > 0) || !(Math.abs(tiltDeg) <= 60) || !Double.isFinite(depthMm + offsetMm + azimuthDeg)) {
            throw new IllegalArgumentException(
                    "a pocket needs a diameter above 0 and a tilt within 60 degrees, got diameter " + diameterMm
                            + " mm, tilt " + tiltDeg + " degrees");
        }
    }

    /** The space that the cutter swept. */
    PocketSpace space() {
        return new PocketSpace(this);
    }

    /** The same pocket in a piston turned by half a turn about the bore axis. */
    public Pocket turned() {
        return new Pocket(diameterMm, depthMm, offsetMm, azimuthDeg + 180, tiltDeg);
    }
}
