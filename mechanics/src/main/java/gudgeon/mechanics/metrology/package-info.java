/** Quantities with doubt, uncertainty budgets and Monte Carlo propagation. */
@NullMarked
package gudgeon.mechanics.metrology;

import org.jspecify.annotations.NullMarked;
