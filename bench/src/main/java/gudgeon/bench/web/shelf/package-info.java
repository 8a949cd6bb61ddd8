/** The shelf: every build. */
@NullMarked
package gudgeon.bench.web.shelf;

import org.jspecify.annotations.NullMarked;
