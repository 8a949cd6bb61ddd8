/** The build record on paper and as one page that stands alone. */
@NullMarked
package gudgeon.bench.print.record;

import org.jspecify.annotations.NullMarked;
