/** When a rebuild will be done: bench work of one person, parts and machinists on their way, and the range that these make. */
@NullMarked
package gudgeon.rebuild.schedule;

import org.jspecify.annotations.NullMarked;
