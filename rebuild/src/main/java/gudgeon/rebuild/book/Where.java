package gudgeon.rebuild.book;

/**
 * A place in a book's file.
 *
 * @param line from 1
 * @param column from 1
 */
public record Where(int line, int column) {}
