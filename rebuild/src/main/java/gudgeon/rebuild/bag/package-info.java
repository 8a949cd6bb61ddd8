/** Bags, trays and boxes: what lies in each, and what their labels say. */
@NullMarked
package gudgeon.rebuild.bag;

import org.jspecify.annotations.NullMarked;
