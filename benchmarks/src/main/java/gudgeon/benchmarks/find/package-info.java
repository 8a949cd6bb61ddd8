/** How long a search for a fault takes. */
@NullMarked
package gudgeon.benchmarks.find;

import org.jspecify.annotations.NullMarked;
