/** Slider-crank motion with pin offset: where the crown stands at a crank angle, and the angle at which it stands so. */
@NullMarked
package gudgeon.mechanics.crank;

import org.jspecify.annotations.NullMarked;
