/** One step or check at a time. */
@NullMarked
package gudgeon.bench.web.assemble;

import org.jspecify.annotations.NullMarked;
