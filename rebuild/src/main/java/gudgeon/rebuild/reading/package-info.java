/** What readings say of a size: the person's instruments, the readings taken with them, and the doubt of what was read. */
@NullMarked
package gudgeon.rebuild.reading;

import org.jspecify.annotations.NullMarked;
