package gudgeon.mechanics.timing;

import gudgeon.mechanics.crank.Crank;

/**
 * What a degree disc read when the piston touched a stop that keeps it from top dead centre, the crank turned either way. The
 * disc's figures rise as the crank turns the way the engine runs.
 *
 * <p>The piston stands equally high at both, so that without a pin offset top dead centre is half way between them. With one,
 * the flanks differ: the angle between the throw and the line from crank axis to gudgeon pin is the same at both, but the line
 * leans otherwise than at top dead centre (law of cosines in the triangle of throw, rod and that line; offset slider-crank as in
 * R. L. Norton, Design of Machinery, chapter 4).
 *
 * @param forwardDeg what it read turning forward, in degrees in [0, 360)
 * @param backwardDeg what it read turning backward, in degrees in [0, 360), not the same
 */
public record StopReadings(double forwardDeg, double backwardDeg) {
    public StopReadings {
        if (!isOnDisc(forwardDeg) || !isOnDisc(backwardDeg) || forwardDeg == backwardDeg) {
            throw new IllegalArgumentException(
                    "two different readings of a disc lie in [0, 360), got " + forwardDeg + " and " + backwardDeg);
        }
    }

    /** Half the arc in degrees that the stop keeps the crank from, above 0 and below 180. */
    public double halfDeg() {
        return Disc.reading(backwardDeg - forwardDeg) / 2;
    }

    /** What the disc reads half way between, in degrees in [0, 360): top dead centre of a crank without pin offset. */
    public double middleDeg() {
        return Disc.reading(forwardDeg + halfDeg());
    }

    /** What the disc reads at true top dead centre of a crank, in degrees in [0, 360). */
    public double topDeg(Crank crank) {
        return Disc.reading(middleDeg() - leanDeg(crank));
    }

    /** How far in mm below its highest the stop held the piston. */
    public double travelMm(Crank crank) {
        double reach = crank.rodMm() + crank.radiusMm();
        double offset2 = crank.pinOffsetMm() * crank.pinOffsetMm();
        double apart = apartMm(crank);
        return Math.sqrt(reach * reach - offset2) - Math.sqrt(apart * apart - offset2);
    }

    /** How much farther the line from crank axis to gudgeon pin leans at the stop than at top dead centre. */
    private double leanDeg(Crank crank) {
        return Math.toDegrees(Math.asin(crank.pinOffsetMm() / (crank.rodMm() + crank.radiusMm()))
                - Math.asin(crank.pinOffsetMm() / apartMm(crank)));
    }

    /** From crank axis to gudgeon pin. */
    private double apartMm(Crank crank) {
        double half = Math.toRadians(halfDeg());
        double across = crank.radiusMm() * Math.sin(half);
        return crank.radiusMm() * Math.cos(half) + Math.sqrt(crank.rodMm() * crank.rodMm() - across * across);
    }

    private static boolean isOnDisc(double deg) {
        return deg >= 0 && deg < 360;
    }
}
