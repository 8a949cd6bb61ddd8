package gudgeon.rebuild.book;

/**
 * An id by which one block of the book names another.
 *
 * @param id the id
 * @param where where it stands
 */
record Reference(String id, Where where) {}
