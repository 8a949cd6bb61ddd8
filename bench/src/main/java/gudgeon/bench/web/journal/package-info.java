/** All that was done and found. */
@NullMarked
package gudgeon.bench.web.journal;

import org.jspecify.annotations.NullMarked;
