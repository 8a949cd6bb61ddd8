/** What must come apart. */
@NullMarked
package gudgeon.bench.web.undo;

import org.jspecify.annotations.NullMarked;
