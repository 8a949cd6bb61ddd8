/** Two parts side by side: what differs, whether that is proven, and what each difference does. */
@NullMarked
package gudgeon.rebuild.compare;

import org.jspecify.annotations.NullMarked;
