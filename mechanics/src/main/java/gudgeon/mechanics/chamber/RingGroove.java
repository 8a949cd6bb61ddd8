package gudgeon.mechanics.chamber;

/**
 * The top ring groove, as far as a pocket may come near it.
 *
 * @param belowMm distance from the crown's reference plane down to the groove's upper side, greater than 0
 * @param depthMm how far it goes in from the top land, greater than 0
 */
public record RingGroove(double belowMm, double depthMm) {
    public RingGroove {
        if (!(belowMm > 0) || !(depthMm > 0) || !Double.isFinite(belowMm + depthMm)) {
            throw new IllegalArgumentException(
                    "a ring groove needs a height below the crown's edge and a depth above 0, got " + belowMm
                            + " mm and " + depthMm + " mm");
        }
    }
}
