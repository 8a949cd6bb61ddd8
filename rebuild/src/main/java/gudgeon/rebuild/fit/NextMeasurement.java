package gudgeon.rebuild.fit;

/**
 * The next measurement worth taking.
 *
 * @param input the size to measure better
 * @param sentence what to measure, with what, and what it would settle
 */
public record NextMeasurement(Input input, String sentence) {}
