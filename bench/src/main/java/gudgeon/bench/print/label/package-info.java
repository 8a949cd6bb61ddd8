/** Labels for bags, on sheets of labels. */
@NullMarked
package gudgeon.bench.print.label;

import org.jspecify.annotations.NullMarked;
