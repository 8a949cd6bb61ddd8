/** What will go wrong if the work goes on. */
@NullMarked
package gudgeon.rebuild.alarm;

import org.jspecify.annotations.NullMarked;
