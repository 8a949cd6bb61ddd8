/** The Trial fit page. */
@NullMarked
package gudgeon.bench.web.fit;

import org.jspecify.annotations.NullMarked;
