/** The Options page: whole ways to go on side by side, and what is to become of each part. */
@NullMarked
package gudgeon.bench.web.options;

import org.jspecify.annotations.NullMarked;
