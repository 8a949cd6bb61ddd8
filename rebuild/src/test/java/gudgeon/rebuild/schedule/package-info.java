/** Tests of the schedule. */
@NullMarked
package gudgeon.rebuild.schedule;

import org.jspecify.annotations.NullMarked;
