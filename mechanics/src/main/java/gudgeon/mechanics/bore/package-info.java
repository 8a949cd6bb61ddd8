/** Worn bores: the least bore that cleans one up, the size to ask for with a piston, ring gaps, the wall left. */
@NullMarked
package gudgeon.mechanics.bore;

import org.jspecify.annotations.NullMarked;
