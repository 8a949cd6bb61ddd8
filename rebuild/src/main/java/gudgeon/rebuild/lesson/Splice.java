package gudgeon.rebuild.lesson;

/**
 * A stretch of a text and what takes its place.
 *
 * @param from index of its first letter
 * @param to index after its last letter; {@code from} where something is put in between
 * @param put what takes its place
 */
record Splice(int from, int to, String put) {}
