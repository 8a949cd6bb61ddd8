/** The journal of a rebuild: facts, each with its time, in their order. */
@NullMarked
package gudgeon.rebuild.journal;

import org.jspecify.annotations.NullMarked;
