package gudgeon.mechanics.metrology;

/**
 * How likely a size lies below, within and above its limits, given what was measured (JCGM 106:2012, clause 7). The three add up
 * to 1.
 *
 * <p>What was measured is taken to be all that is known, and the size to be spread about it as a normal distribution, or as a
 * scaled and shifted t distribution where the uncertainty rests on few readings (JCGM 100:2008, G.3.2). For an uncertainty that
 * comes from stated bounds, this errs on the side of doubt: beyond the bounds it still sees a chance where there is none.
 *
 * @param below the probability that the size is less than the lower limit
 * @param inside the conformance probability (JCGM 106:2012, 3.3.7)
 * @param above the probability that the size is more than the upper limit
 */
public record Conformity(double below, double inside, double above) {
    /** What is asked of a proof unless said otherwise (ISO 14253-1:2017, clause 4). */
    public static final double DEFAULT_PROOF = 0.95;

    /**
     * Of a measured size.
     *
     * @param measured value and doubts, in the unit of the limits
     */
    public static Conformity of(Quantity measured, ToleranceInterval limits) {
        return of(measured.value(), measured.standardUncertainty(), measured.degreesOfFreedom(), limits);
    }

    /**
     * Of a measured value (JCGM 106:2012, 7.2 to 7.4).
     *
     * @param value the best estimate, finite, in the unit of the limits
     * @param standardUncertainty its standard uncertainty, 0 or more; with 0 one of the three is certain
     * @param degreesOfFreedom those of the uncertainty, above 0; infinite for a normal distribution
     */
    public static Conformity of(
            double value, double standardUncertainty, double degreesOfFreedom, ToleranceInterval limits) {
        if (standardUncertainty == 0) {
            return new Conformity(
                    value < limits.lower() ? 1 : 0, limits.holds(value) ? 1 : 0, value > limits.upper() ? 1 : 0);
        }
        Spread spread = Spread.of(degreesOfFreedom);
        double below = spread.below((limits.lower() - value) / standardUncertainty);
        // the same tail by symmetry: one less a number near 1 would lose its digits
        double above = spread.below((value - limits.upper()) / standardUncertainty);
        return new Conformity(below, Math.max(0, 1 - below - above), above);
    }

    /** The probability that the size lies outside its limits. */
    public double outside() {
        return below + above;
    }

    /** What is proved if a chance of being wrong of 5 % is borne, see {@link #zone(double)}. */
    public Zone zone() {
        return zone(DEFAULT_PROOF);
    }

    /**
     * What is proved. In the limits or out of them only if it is at least as likely as asked; so whoever has to prove it bears
     * the doubt, whichever way it is to be proved (ISO 14253-1:2017, 5.2 and 5.3).
     *
     * @param proof the probability asked for, above 0.5 and below 1
     */
    public Zone zone(double proof) {
        if (!(proof > 0.5 && proof < 1)) {
            throw new IllegalArgumentException("a proof is asked for between 0.5 and 1, got " + proof);
        }
        if (inside >= proof) {
            return Zone.IN;
        }
        return outside() >= proof ? Zone.OUT : Zone.UNPROVEN;
    }
}
