/** Taking down with a record. */
@NullMarked
package gudgeon.bench.web.strip;

import org.jspecify.annotations.NullMarked;
