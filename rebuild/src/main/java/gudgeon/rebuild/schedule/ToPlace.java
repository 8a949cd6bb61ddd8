package gudgeon.rebuild.schedule;

/**
 * An order that has still to be placed.
 *
 * @param position id of the position it is for
 * @param name what a fitter calls it
 * @param costsDays by how many days the half-date moves if it is placed a week later than today
 * @param sentence the same as a sentence
 */
public record ToPlace(String position, String name, long costsDays, String sentence) {}
