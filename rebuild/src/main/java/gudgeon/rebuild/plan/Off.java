package gudgeon.rebuild.plan;

/**
 * A position whose part can come off next.
 *
 * @param position the position
 * @param name what a fitter calls it
 * @param quantity how many parts sit there
 * @param step the step that fits it; empty if none does
 */
public record Off(String position, String name, int quantity, String step) {}
