/** The shelf: builds with their journals and books, kept in a database that never loses what it acknowledged. */
@NullMarked
package gudgeon.store.shelf;

import org.jspecify.annotations.NullMarked;
