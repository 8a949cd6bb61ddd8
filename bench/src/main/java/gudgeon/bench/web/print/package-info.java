/** Papers to take away. */
@NullMarked
package gudgeon.bench.web.print;

import org.jspecify.annotations.NullMarked;
