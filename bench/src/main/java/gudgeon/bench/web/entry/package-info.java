/** Where entries are sent to: forms in, facts out. */
@NullMarked
package gudgeon.bench.web.entry;

import org.jspecify.annotations.NullMarked;
