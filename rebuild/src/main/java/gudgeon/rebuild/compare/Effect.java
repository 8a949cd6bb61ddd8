package gudgeon.rebuild.compare;

/**
 * What one difference does to one gap or figure, applied alone to the first part.
 *
 * @param label the gap or figure, such as "exhaust bore gap"
 * @param unit its unit, empty for a ratio
 * @param before with the first part as it is
 * @param after with the one difference applied to it
 * @param sentence the same as a person reads it
 */
public record Effect(String label, String unit, double before, double after, String sentence) {}
