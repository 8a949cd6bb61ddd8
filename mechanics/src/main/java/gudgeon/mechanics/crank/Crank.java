package gudgeon.mechanics.crank;

/**
 * A slider-crank with an offset gudgeon pin.
 *
 * <p>Crank angle 0 is true firing top dead centre, 360 the overlap top dead centre; angles are degrees and are taken modulo
 * 720. Heights are millimetres above the deck, the barrel's gasket face.
 *
 * @param radiusMm crank radius, half the throw, greater than 0
 * @param rodMm rod length between eye centres, greater than {@code radiusMm + |pinOffsetMm|}
 * @param pinOffsetMm the pin's x, positive towards the major thrust side
 * @param protrusionMm height of the crown's reference plane above the deck at top dead centre, negative below it
 */
public record Crank(double radiusMm, double rodMm, double pinOffsetMm, double protrusionMm) {
    public Crank {
        if (!(radiusMm > 0) || !(rodMm > radiusMm + Math.abs(pinOffsetMm)) || !Double.isFinite(rodMm + protrusionMm)) {
            throw new IllegalArgumentException("a crank needs radius > 0 and rod > radius + |pin offset|, got radius "
                    + radiusMm + " mm, rod " + rodMm + " mm, pin offset " + pinOffsetMm + " mm");
        }
    }

    /** Height in mm of the crown's reference plane above the deck at a crank angle in degrees. */
    public double crownHeightMm(double thetaDeg) {
        double alpha = Math.toRadians(thetaDeg) - Math.asin(pinOffsetMm / (rodMm + radiusMm));
        double across = pinOffsetMm + radiusMm * Math.sin(alpha);
        double reach = rodMm + radiusMm;
        return protrusionMm
                + radiusMm * Math.cos(alpha)
                + Math.sqrt(rodMm * rodMm - across * across)
                - Math.sqrt(reach * reach - pinOffsetMm * pinOffsetMm);
    }
}
