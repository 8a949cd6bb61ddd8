package gudgeon.rebuild.build;

/**
 * A size measured on a part that does not count, since it can't be read or the book has no such size.
 *
 * @param position the position whose part it is
 * @param sentence why, and what to do
 */
public record Unread(String position, String sentence) {}
