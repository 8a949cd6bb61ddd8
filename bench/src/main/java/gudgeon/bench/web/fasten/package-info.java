/** Fasteners: joints and their maps, the heap, torque wrenches. */
@NullMarked
package gudgeon.bench.web.fasten;

import org.jspecify.annotations.NullMarked;
