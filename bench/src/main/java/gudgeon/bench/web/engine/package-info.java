/** The engine book, to explore and to change. */
@NullMarked
package gudgeon.bench.web.engine;

import org.jspecify.annotations.NullMarked;
