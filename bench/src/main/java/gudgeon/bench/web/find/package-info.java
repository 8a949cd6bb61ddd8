/** Find the fault: searches with their suspects, and how the engine seals. */
@NullMarked
package gudgeon.bench.web.find;

import org.jspecify.annotations.NullMarked;
