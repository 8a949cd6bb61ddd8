/** Tests of the plan. */
@NullMarked
package gudgeon.rebuild.plan;

import org.jspecify.annotations.NullMarked;
