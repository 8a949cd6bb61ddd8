/** Lists to be printed and ticked by pen: what to do, to measure, to order and to look at before the first start. */
@NullMarked
package gudgeon.rebuild.tick;

import org.jspecify.annotations.NullMarked;
