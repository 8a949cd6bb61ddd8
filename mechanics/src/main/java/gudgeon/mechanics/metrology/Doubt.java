package gudgeon.mechanics.metrology;

/**
 * One component of a quantity's uncertainty.
 *
 * @param origin where it comes from
 * @param distribution its distribution
 * @param standardUncertainty its standard deviation, 0 or more, in the quantity's unit
 */
public record Doubt(Origin origin, Distribution distribution, double standardUncertainty) {
    public Doubt {
        if (!(standardUncertainty >= 0)) {
            throw new IllegalArgumentException("a standard uncertainty is 0 or more, got " + standardUncertainty);
        }
    }
}
