/** Limits of size: ISO 286 tolerance classes and fits, ISO 15 bearing sizes, interference and heat, shims. */
@NullMarked
package gudgeon.mechanics.limits;

import org.jspecify.annotations.NullMarked;
