/** Lists on paper, with boxes to tick. */
@NullMarked
package gudgeon.bench.print.tick;

import org.jspecify.annotations.NullMarked;
