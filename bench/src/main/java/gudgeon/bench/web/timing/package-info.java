/** Timing: true top dead centre, the cam by the degree disc, the spark and the points. */
@NullMarked
package gudgeon.bench.web.timing;

import org.jspecify.annotations.NullMarked;
