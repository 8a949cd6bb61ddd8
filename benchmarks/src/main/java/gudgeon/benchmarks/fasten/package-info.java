/** Fasteners allotted to holes, beside a general-purpose solver on the same instance. */
@NullMarked
package gudgeon.benchmarks.fasten;

import org.jspecify.annotations.NullMarked;
