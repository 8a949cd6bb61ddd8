/** Mistakes played as an exercise: what must be seen, when at the latest, and whether it was. */
@NullMarked
package gudgeon.rebuild.drill;

import org.jspecify.annotations.NullMarked;
