package gudgeon.rebuild.plan;

/**
 * How far the rebuild has come. What is together as it was found and was never taken apart does not count.
 *
 * @param done steps that are done
 * @param all steps that there are to do
 * @param minutesLeft likely time of work of the steps and checks that are left
 * @param sentence the same as a sentence
 */
public record Progress(int done, int all, int minutesLeft, String sentence) {}
