/** Paper: what is printed at true size. */
@NullMarked
package gudgeon.bench.print;

import org.jspecify.annotations.NullMarked;
