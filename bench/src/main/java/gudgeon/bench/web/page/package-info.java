/** How pages are shown. */
@NullMarked
package gudgeon.bench.web.page;

import org.jspecify.annotations.NullMarked;
