package gudgeon.rebuild.plan;

/**
 * A part that can be used only once, is destroyed by the undoing, and has to be bought.
 *
 * @param position the position it is for
 * @param name what a fitter calls it
 * @param quantity how many
 * @param price what one cost when it was ordered last, as written; empty if it never was
 */
public record Buy(String position, String name, int quantity, String price) {}
