@NullMarked
package gudgeon.rebuild.drill;

import org.jspecify.annotations.NullMarked;
