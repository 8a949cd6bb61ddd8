/** Engine books to start from: the structure filled in, the figures left open. */
@NullMarked
package gudgeon.rebuild.archetype;

import org.jspecify.annotations.NullMarked;
