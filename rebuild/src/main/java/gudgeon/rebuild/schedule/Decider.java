package gudgeon.rebuild.schedule;

/**
 * What the end hangs on.
 *
 * @param id id of the position that is waited for; empty for the hours at the bench
 * @param share the share of cases, from 0 to 1, in which the end hangs on it
 * @param sentence the same as a sentence
 */
public record Decider(String id, double share, String sentence) {}
