/** Joints of several fasteners: in what order and in how many passes they are tightened, and in what lengths screws are made. */
@NullMarked
package gudgeon.mechanics.joint;

import org.jspecify.annotations.NullMarked;
