package gudgeon.rebuild.fit;

/**
 * A figure of the fit other than a gap, such as the compression ratio or the metal left under a pocket.
 *
 * @param key stable name for JSON, such as {@code compressionRatio}
 * @param label what a fitter calls it
 * @param low the figure, or the lower end where it is a range
 * @param high the figure again, or the upper end of the range
 * @param unit unit, empty for a ratio
 * @param standardUncertainty its standard uncertainty, 0 where it is a range
 * @param working how it was worked out
 */
public record Figure(
        String key, String label, double low, double high, String unit, double standardUncertainty, Working working) {}
