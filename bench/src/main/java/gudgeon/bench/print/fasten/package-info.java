/** Fasteners on paper: the card to push them through and the torque sheet for the wall. */
@NullMarked
package gudgeon.bench.print.fasten;

import org.jspecify.annotations.NullMarked;
