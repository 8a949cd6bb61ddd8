package gudgeon.rebuild.plan;

/**
 * A step or check that can be done with what is in hand.
 *
 * @param id the step or check
 * @param isCheck whether it is a check
 * @param name what is done, as a fitter says it
 * @param minutes likely time of work; 0 where the book does not say
 * @param why why it stands where it does among the others, sentences
 */
public record Doable(String id, boolean isCheck, String name, int minutes, String why) {}
