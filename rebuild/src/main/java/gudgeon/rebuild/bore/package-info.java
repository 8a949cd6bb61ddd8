/** The bore plan: which oversize cleans a worn bore up, and what to ask the machinist for with the piston in hand. */
@NullMarked
package gudgeon.rebuild.bore;

import org.jspecify.annotations.NullMarked;
