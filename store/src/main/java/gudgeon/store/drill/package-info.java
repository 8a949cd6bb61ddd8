/** Drills: folders with a mistake and its twin without it, read, varied and played. */
@NullMarked
package gudgeon.store.drill;

import org.jspecify.annotations.NullMarked;
