/** The pages of the first start and of running in. */
@NullMarked
package gudgeon.bench.web.start;

import org.jspecify.annotations.NullMarked;
