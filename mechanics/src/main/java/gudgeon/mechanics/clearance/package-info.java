/** The seven gaps between valves, crown, bore and head through the cycle. */
@NullMarked
package gudgeon.mechanics.clearance;

import org.jspecify.annotations.NullMarked;
