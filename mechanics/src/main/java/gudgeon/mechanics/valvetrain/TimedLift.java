package gudgeon.mechanics.valvetrain;

/**
 * A valve's lift from its lobe's: placed at the lobe's centre, multiplied by the rocker, less the valve clearance.
 *
 * @param lobe the lobe's lift about its own centre at 0 degrees
 * @param centreDeg crank angle of the lobe's centre: 360 + centre for an inlet, 360 - centre for an exhaust, the cam's shift
 *     included
 * @param rockerRatio valve lift over lobe lift, above 0
 * @param clearanceMm valve clearance; negative where the lobe's lift was taken at the valve with more clearance than is now set
 */
public record TimedLift(Lift lobe, double centreDeg, double rockerRatio, double clearanceMm) implements Lift {
    public TimedLift {
        if (!(rockerRatio > 0)) {
            throw new IllegalArgumentException("a rocker ratio is above 0, got " + rockerRatio);
        }
    }

    /** Crank degrees by which a cam moves when its drive is moved by some teeth of its own sprocket; positive is later. */
    public static double shiftDeg(int teeth, int sprocketTeeth) {
        if (sprocketTeeth < 1) {
            throw new IllegalArgumentException("a sprocket has one tooth or more, got " + sprocketTeeth);
        }
        return 720.0 * teeth / sprocketTeeth;
    }

    @Override
    public double mmAt(double thetaDeg) {
        double lift = lobe.mmAt(thetaDeg - centreDeg);
        // on the base circle there is no lift, whatever the clearance
        return lift > 0 ? Math.max(0, rockerRatio * lift - clearanceMm) : 0;
    }
}
