package gudgeon.rebuild.build;

/**
 * A size measured on a part that does not count, since it can't be read or the book has no such size.
 *
 * @param position the position whose part it is
 * @param sentence why, and what to do
 * @param garbled whether it can't be read; false where the book just has no figure that it could stand for
 */
public record Unread(String position, String sentence, boolean garbled) {}
