/** Bolts and tightening: strength, torque and preload, heads, wrenches and their units. */
@NullMarked
package gudgeon.mechanics.bolt;

import org.jspecify.annotations.NullMarked;
