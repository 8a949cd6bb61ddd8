/** A flat face seen by a camera: from points of a picture to millimetres. */
@NullMarked
package gudgeon.mechanics.plane;

import org.jspecify.annotations.NullMarked;
