package gudgeon.mechanics.crank;

/**
 * A slider-crank with an offset gudgeon pin.
 *
 * <p>Crank angle 0 is true firing top dead centre, 360 the overlap top dead centre; angles are degrees and are taken modulo
 * 720. Heights are millimetres above the deck, the barrel's gasket face.
 *
 * <p>Formulas: R. L. Norton, Design of Machinery, chapter 4 (offset slider-crank); without offset J. B. Heywood, Internal
 * Combustion Engine Fundamentals, 1988, equations 2.5 and 2.11.
 *
 * @param radiusMm crank radius, half the throw, greater than 0
 * @param rodMm rod length between eye centres, greater than {@code radiusMm + |pinOffsetMm|}
 * @param pinOffsetMm the pin's x, positive towards the major thrust side
 * @param protrusionMm height of the crown's reference plane above the deck at top dead centre, negative below it
 */
public record Crank(double radiusMm, double rodMm, double pinOffsetMm, double protrusionMm) {
    private static final double MM_PER_M = 1000;
    private static final double SECONDS_PER_MINUTE = 60;

    public Crank {
        if (!(radiusMm > 0) || !(rodMm > radiusMm + Math.abs(pinOffsetMm)) || !Double.isFinite(rodMm + protrusionMm)) {
            throw new IllegalArgumentException("a crank needs radius > 0 and rod > radius + |pin offset|, got radius "
                    + radiusMm + " mm, rod " + rodMm + " mm, pin offset " + pinOffsetMm + " mm");
        }
    }

    /** Height in mm of the crown's reference plane above the deck at a crank angle in degrees. */
    public double crownHeightMm(double thetaDeg) {
        // asked for in the innermost loops: the throw's lean at top enters by its sine and cosine, not by an arc sine
        double theta = Math.toRadians(thetaDeg);
        double sin = Math.sin(theta);
        double cos = Math.cos(theta);
        double reach = rodMm + radiusMm;
        double leanSin = pinOffsetMm / reach;
        double leanCos = Math.sqrt(1 - leanSin * leanSin);
        double across = pinOffsetMm + radiusMm * (sin * leanCos - cos * leanSin);
        return protrusionMm
                + radiusMm * (cos * leanCos + sin * leanSin)
                + Math.sqrt(rodMm * rodMm - across * across)
                - reach * leanCos;
    }

    /** Travel in mm of the piston down from its highest, at a crank angle in degrees. */
    public double travelMm(double thetaDeg) {
        return protrusionMm - crownHeightMm(thetaDeg);
    }

    /** Distance in mm between the dead centres; with an offset pin a little more than twice the crank radius. */
    public double strokeMm() {
        double e2 = pinOffsetMm * pinOffsetMm;
        double stretched = rodMm + radiusMm;
        double folded = rodMm - radiusMm;
        return Math.sqrt(stretched * stretched - e2) - Math.sqrt(folded * folded - e2);
    }

    /** The crank angle in degrees of bottom dead centre after firing, where rod and throw are folded into one line. */
    public double bottomDeg() {
        return 180
                - Math.toDegrees(Math.asin(pinOffsetMm / (rodMm - radiusMm)))
                + Math.toDegrees(Math.asin(pinOffsetMm / (rodMm + radiusMm)));
    }

    /** Speed of the piston towards the head, in mm per degree of crank: the first derivative of the height. */
    public double speedMmPerDeg(double thetaDeg) {
        double alpha = alpha(thetaDeg);
        double across = pinOffsetMm + radiusMm * Math.sin(alpha);
        double along = Math.sqrt(rodMm * rodMm - across * across);
        double perRadian = -radiusMm * Math.sin(alpha) - across * radiusMm * Math.cos(alpha) / along;
        return Math.toRadians(perRadian);
    }

    /** Acceleration of the piston towards the head, in mm per degree of crank squared: the second derivative of the height. */
    public double accelerationMmPerDeg2(double thetaDeg) {
        double alpha = alpha(thetaDeg);
        double sin = radiusMm * Math.sin(alpha);
        double cos = radiusMm * Math.cos(alpha);
        double across = pinOffsetMm + sin;
        double along2 = rodMm * rodMm - across * across;
        double along = Math.sqrt(along2);
        double perRadian2 = -cos - (cos * cos - across * sin) / along - across * across * cos * cos / (along2 * along);
        return Math.toRadians(Math.toRadians(perRadian2));
    }

    /** Speed of the piston towards the head in m/s, at a crank angle in degrees and a crank speed in revolutions a minute. */
    public double speedMPerS(double thetaDeg, double rpm) {
        return speedMmPerDeg(thetaDeg) * degPerS(rpm) / MM_PER_M;
    }

    /** Acceleration of the piston towards the head in m/s2, at a crank angle in degrees and revolutions a minute. */
    public double accelerationMPerS2(double thetaDeg, double rpm) {
        return accelerationMmPerDeg2(thetaDeg) * degPerS(rpm) * degPerS(rpm) / MM_PER_M;
    }

    /** Mean piston speed in m/s: twice the stroke for every revolution (Heywood, eq. 2.9). */
    public double meanPistonSpeedMPerS(double rpm) {
        return PistonSpeed.meanMPerS(strokeMm(), rpm);
    }

    /**
     * Degrees before top dead centre at which the piston is a travel short of its highest: "ignition so many mm before top dead
     * centre" in degrees.
     *
     * @param travelMm from 0 to the stroke
     * @throws IllegalArgumentException if the piston never stands there
     */
    public double degBeforeTop(double travelMm) {
        return openingDeg(travelMm) - leanDeg(travelMm);
    }

    /**
     * Degrees after top dead centre at which the piston is a travel past its highest. With an offset pin not the same as before.
     *
     * @param travelMm from 0 to the stroke
     * @throws IllegalArgumentException if the piston never stands there
     */
    public double degAfterTop(double travelMm) {
        return openingDeg(travelMm) + leanDeg(travelMm);
    }

    /** Travel in mm at so many degrees before top dead centre. */
    public double travelBeforeTopMm(double deg) {
        return travelMm(-deg);
    }

    private double pinHeight(double travelMm) {
        if (!(travelMm >= 0 && travelMm <= strokeMm())) {
            throw new IllegalArgumentException(
                    "a piston's travel is from 0 mm to its stroke of " + strokeMm() + " mm, got " + travelMm);
        }
        double reach = rodMm + radiusMm;
        return Math.sqrt(reach * reach - pinOffsetMm * pinOffsetMm) - travelMm;
    }

    /** Angle between the throw and the line from the crank's axis to the gudgeon pin, by the law of cosines. */
    private double openingDeg(double travelMm) {
        double height = pinHeight(travelMm);
        double apart2 = pinOffsetMm * pinOffsetMm + height * height;
        double cos = (apart2 + radiusMm * radiusMm - rodMm * rodMm) / (2 * Math.sqrt(apart2) * radiusMm);
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cos))));
    }

    /** How much farther that line leans at a travel than at top dead centre. */
    private double leanDeg(double travelMm) {
        double height = pinHeight(travelMm);
        return Math.toDegrees(
                Math.asin(pinOffsetMm / (rodMm + radiusMm)) - Math.asin(pinOffsetMm / Math.hypot(pinOffsetMm, height)));
    }

    private double alpha(double thetaDeg) {
        return Math.toRadians(thetaDeg) - Math.asin(pinOffsetMm / (rodMm + radiusMm));
    }

    private static double degPerS(double rpm) {
        return rpm * 360 / SECONDS_PER_MINUTE;
    }
}
