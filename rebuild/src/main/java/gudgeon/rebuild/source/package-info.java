/**
 * Where parts come from: what must be bought and why, what is on its way, what it costs, whether what came is what was wanted, and
 * what to write when it is not. Stands on the build and the plan.
 */
@NullMarked
package gudgeon.rebuild.source;

import org.jspecify.annotations.NullMarked;
