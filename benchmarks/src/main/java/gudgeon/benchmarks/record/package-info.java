/** How long a build record takes to print. */
@NullMarked
package gudgeon.benchmarks.record;

import org.jspecify.annotations.NullMarked;
