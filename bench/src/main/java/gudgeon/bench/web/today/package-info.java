/** Where the work is picked up. */
@NullMarked
package gudgeon.bench.web.today;

import org.jspecify.annotations.NullMarked;
