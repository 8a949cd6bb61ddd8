/** Crown shapes and pockets, the volumes they make, compression, and the metal left around a pocket. */
@NullMarked
package gudgeon.mechanics.chamber;

import org.jspecify.annotations.NullMarked;
