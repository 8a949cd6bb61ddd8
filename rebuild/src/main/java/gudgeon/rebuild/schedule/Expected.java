package gudgeon.rebuild.schedule;

/**
 * Something that will come to be on a day that is not certain.
 *
 * @param id id of the position or check
 * @param what what comes, or what is proved, as a person reads it
 * @param day when
 */
public record Expected(String id, String what, DateRange day) {}
