/** An engine book in the order in which the engine goes together, as it is printed and read at the bench. */
@NullMarked
package gudgeon.rebuild.sheet;

import org.jspecify.annotations.NullMarked;
