/** Degree disc, dial gauge and points: where top dead centre, a lobe's centre and the spark stand on the turning crank. */
@NullMarked
package gudgeon.mechanics.timing;

import org.jspecify.annotations.NullMarked;
