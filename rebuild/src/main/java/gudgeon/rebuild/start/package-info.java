/** The list before the first start, and its signature. */
@NullMarked
package gudgeon.rebuild.start;

import org.jspecify.annotations.NullMarked;
