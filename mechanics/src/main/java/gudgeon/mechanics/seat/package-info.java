/** Valve seats: contact width, where it lands on the valve's face, how far a cut moves it, how far the valve sinks. */
@NullMarked
package gudgeon.mechanics.seat;

import org.jspecify.annotations.NullMarked;
