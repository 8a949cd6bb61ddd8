@NullMarked
package gudgeon.bench.print.tick;

import org.jspecify.annotations.NullMarked;
