package gudgeon.mechanics.valvetrain;

import java.util.ArrayList;
import java.util.List;

/**
 * What is known of a lift from its opening and closing angles at a stated lift and its greatest lift alone: two bounds. They are
 * the least and the greatest, at each angle, of a family of laws that all pass through the two stated points and reach the
 * greatest lift half-way between: constant deceleration over the nose (a parabola, the fullest profile that springs allow for
 * a given spring force), simple harmonic motion, and the 3-4-5 and 4-5-6-7 polynomials, which lean the most. A cam that is fuller
 * than a parabola or not symmetrical about its greatest lift is outside the band.
 *
 * @param lean the least lift of the family
 * @param full the greatest lift of the family
 */
public record LiftBand(Lift lean, Lift full) {
    /**
     * The band of a valve's lift.
     *
     * @param opensDeg crank angle at which the valve reaches {@code atMm}
     * @param closesDeg crank angle at which it is back there, after {@code opensDeg} by less than 720 degrees
     * @param atMm the stated lift, above 0 and below the greatest
     * @param greatestMm greatest lift
     * @throws IllegalArgumentException if they are not so
     */
    public static LiftBand of(double opensDeg, double closesDeg, double atMm, double greatestMm) {
        double between = closesDeg - opensDeg;
        if (!(between > 0 && between < 720) || !(atMm > 0 && atMm < greatestMm)) {
            throw new IllegalArgumentException(
                    "a lift band needs closing after opening within one cycle, and a stated lift above 0"
                            + " and below the greatest; got " + opensDeg + " to " + closesDeg + " degrees at " + atMm
                            + " mm of " + greatestMm);
        }
        double centre = (opensDeg + closesDeg) / 2;
        double half = between / 2;
        List<Lift> family = new ArrayList<>();
        double fall = (greatestMm - atMm) / (half * half);
        family.add(theta -> {
            double from = Math.IEEEremainder(theta - centre, 720);
            return Math.max(0, greatestMm - fall * from * from);
        });
        for (LiftLaw law : List.of(LiftLaw.HARMONIC, LiftLaw.POLYNOMIAL_345, LiftLaw.POLYNOMIAL_4567)) {
            double duration = between / (1 - fractionAt(law, atMm / greatestMm));
            // a law that would need more than the whole cycle is no cam's
            if (duration <= 720) {
                LawLift lift = new LawLift(law, duration, greatestMm);
                family.add(theta -> lift.mmAt(theta - centre));
            }
        }
        Lift[] members = family.toArray(Lift[]::new);
        return new LiftBand(theta -> extreme(members, theta, false), theta -> extreme(members, theta, true));
    }

    private static double extreme(Lift[] members, double theta, boolean greatest) {
        double extreme = members[0].mmAt(theta);
        for (int i = 1; i < members.length; i++) {
            double lift = members[i].mmAt(theta);
            extreme = greatest ? Math.max(extreme, lift) : Math.min(extreme, lift);
        }
        return extreme;
    }

    /** The fraction of a rise at which a law has risen so far; bisected, as every law rises without turning back. */
    private static double fractionAt(LiftLaw law, double rise) {
        double low = 0;
        double high = 1;
        while (high - low > 1e-13) {
            double middle = (low + high) / 2;
            if (law.rise(middle) < rise) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
