package gudgeon.mechanics.metrology;

import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** How an error is spread, in standard uncertainties about 0: normal, or Student's where the uncertainty rests on few readings. */
record Spread(RealDistribution distribution) {
    /** With more, the two agree to better than four digits. */
    private static final double MANY = 1e5;

    private static final Spread NORMAL = new Spread(new NormalDistribution());

    /**
     * The spread that goes with an uncertainty.
     *
     * @param degreesOfFreedom above 0; need not be whole (JCGM 100:2008, G.4.1)
     * @throws IllegalArgumentException if they are not
     */
    static Spread of(double degreesOfFreedom) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom are more than 0, got " + degreesOfFreedom);
        }
        return degreesOfFreedom > MANY ? NORMAL : new Spread(new TDistribution(degreesOfFreedom));
    }

    /** The probability of less than so many standard uncertainties. */
    double below(double units) {
        if (Double.isInfinite(units)) {
            return units > 0 ? 1 : 0;
        }
        return distribution.cumulativeProbability(units);
    }

    /** The number of standard uncertainties below which such a part of all lies. */
    double quantile(double probability) {
        return distribution.inverseCumulativeProbability(probability);
    }
}
