/** What can be done now, what waits for what, what comes off next, what a fault undoes, and in which order work is lost least. */
@NullMarked
package gudgeon.rebuild.plan;

import org.jspecify.annotations.NullMarked;
