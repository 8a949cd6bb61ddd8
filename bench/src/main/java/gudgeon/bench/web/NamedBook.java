package gudgeon.bench.web;

import gudgeon.rebuild.book.Geometry;

/**
 * A book that is served.
 *
 * @param name its name in the address, unique among the books served: letters, digits, hyphens
 * @param book the book
 */
public record NamedBook(String name, Geometry book) {
    public NamedBook {
        if (!name.matches("[A-Za-z0-9-]+")) {
            throw new IllegalArgumentException(
                    "a served book's name has letters, digits and hyphens only, got " + name);
        }
    }
}
