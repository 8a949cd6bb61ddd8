package gudgeon.rebuild.fit;

/**
 * One input's part in the doubt of a figure.
 *
 * @param input the input
 * @param sensitivity change of the figure per unit of the input
 * @param share part of the figure's variance, 0 to 1
 */
public record Share(Input input, double sensitivity, double share) {}
