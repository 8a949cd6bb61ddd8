package gudgeon.rebuild.book;

/**
 * Something wrong, doubtful or missing in a book.
 *
 * @param line from 1; 0 where it is the whole file
 * @param column from 1; 0 where it is the whole file
 * @param path the key's path, empty for the whole file
 * @param what what is wrong, a sentence
 * @param expected what was expected or what to do, a sentence, may be empty
 * @param severity how bad it is
 */
public record Fault(int line, int column, String path, String what, String expected, Severity severity) {
    /** How bad a fault is. */
    public enum Severity {
        /** The book can't be used. */
        FAULT,
        /** Hard to believe, yet the book can be used. */
        DOUBT,
        /** Missing, so that something can't be worked out or is taken as said. */
        NOTE
    }

    /** Where, what and what to do, on one line. */
    public String sentence() {
        StringBuilder text = new StringBuilder();
        if (line > 0) {
            text.append("Line ").append(line).append(", column ").append(column);
            text.append(path.isEmpty() ? ": " : ", " + path + ": ");
        }
        text.append(what);
        return expected.isEmpty()
                ? text.toString()
                : text.append(' ').append(expected).toString();
    }
}
