@NullMarked
package gudgeon.bench.drill;

import org.jspecify.annotations.NullMarked;
