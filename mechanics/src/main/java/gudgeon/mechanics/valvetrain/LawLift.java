package gudgeon.mechanics.valvetrain;

/**
 * The lift of a symmetrical lobe by a named law, about its own centre at 0 degrees.
 *
 * @param law the law of the rise
 * @param durationDeg crank degrees from the start of lift to its end, above 0 and at most 720
 * @param greatestMm greatest lift, 0 or more
 */
public record LawLift(LiftLaw law, double durationDeg, double greatestMm) implements Lift {
    public LawLift {
        if (!(durationDeg > 0 && durationDeg <= 720) || !(greatestMm >= 0)) {
            throw new IllegalArgumentException(
                    "a lift law needs a duration above 0 and up to 720 degrees and a greatest lift of"
                            + " 0 or more, got " + durationDeg + " degrees and " + greatestMm + " mm");
        }
    }

    @Override
    public double mmAt(double thetaDeg) {
        double from = Math.abs(Math.IEEEremainder(thetaDeg, 720));
        return greatestMm * law.rise(1 - from / (durationDeg / 2));
    }
}
