package gudgeon.mechanics.metrology;

/**
 * An expanded uncertainty: the size lies within so much either side of the value with the coverage probability asked for
 * (JCGM 100:2008, 6.2 and G.6.4).
 *
 * @param coverageFactor k, above 0
 * @param halfWidth U = k u, 0 or more, in the quantity's unit
 */
public record Expanded(double coverageFactor, double halfWidth) {
    /** With a coverage probability of 95 %. */
    public static Expanded of(Quantity measured) {
        return of(measured, Propagation.COVERAGE_PROBABILITY);
    }

    /**
     * With a factor from the t distribution (JCGM 100:2008, table G.2), by degrees of freedom that need not be whole.
     *
     * @param coverageProbability above 0 and below 1
     */
    public static Expanded of(Quantity measured, double coverageProbability) {
        if (!(coverageProbability > 0 && coverageProbability < 1)) {
            throw new IllegalArgumentException(
                    "a coverage probability lies between 0 and 1, got " + coverageProbability);
        }
        double factor = Spread.of(measured.degreesOfFreedom()).quantile((1 + coverageProbability) / 2);
        return new Expanded(factor, factor * measured.standardUncertainty());
    }

    /**
     * The guard band: how far inside a single limit a value must lie to be proved within it, and how far outside to be proved
     * beyond it (JCGM 106:2012, 8.3.2; ISO 14253-1:2017, 5.2).
     *
     * @param proof the probability asked for, above 0.5 and below 1
     */
    public static double guardBand(Quantity measured, double proof) {
        return Spread.of(measured.degreesOfFreedom()).quantile(proof) * measured.standardUncertainty();
    }
}
