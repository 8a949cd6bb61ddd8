@NullMarked
package gudgeon.bench.print.record;

import org.jspecify.annotations.NullMarked;
