/** Valve lift over the crank angle: measured tables, named laws, opening and closing angles, and the cam drive. */
@NullMarked
package gudgeon.mechanics.valvetrain;

import org.jspecify.annotations.NullMarked;
