/** Work on valves and their seats: what it does to the springs, where the seat lands, and what can be done when a head is too small. */
@NullMarked
package gudgeon.rebuild.valvework;

import org.jspecify.annotations.NullMarked;
