package gudgeon.mechanics.clearance;

/**
 * The gaps drawn over the crank angle, for a plot. Values in mm; NaN where a gap does not exist at that angle. Arrays are
 * indexed [valve][sample] and must not be changed.
 *
 * @param thetaDeg the angles sampled
 */
@SuppressWarnings("ArrayRecordComponent") // plotted at once and thrown away; copying would cost what the plot saves
public record Curves(
        double[] thetaDeg,
        double[][] boreMm,
        double[][] valveMm,
        double[][] nearestMm,
        double[][] sideMm,
        double[][] wallMm,
        double[][] liftMm,
        double[] deckMm,
        double[] valveToValveMm) {}
