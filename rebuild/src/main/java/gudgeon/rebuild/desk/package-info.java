/** Small answers at the desk, in words: fits, bearings by number, ring gaps, shims. They need no engine book. */
@NullMarked
package gudgeon.rebuild.desk;

import org.jspecify.annotations.NullMarked;
