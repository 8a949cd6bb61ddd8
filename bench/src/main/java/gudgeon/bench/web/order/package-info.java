/** The order in which a fault undoes least. */
@NullMarked
package gudgeon.bench.web.order;

import org.jspecify.annotations.NullMarked;
