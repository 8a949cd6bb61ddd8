/** Files that are whole and on disk, or not there at all. */
@NullMarked
package gudgeon.store.disk;

import org.jspecify.annotations.NullMarked;
