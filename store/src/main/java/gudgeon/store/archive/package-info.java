/** A build as one archive file that also opens with ordinary tools. */
@NullMarked
package gudgeon.store.archive;

import org.jspecify.annotations.NullMarked;
