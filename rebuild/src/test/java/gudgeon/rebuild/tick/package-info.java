@NullMarked
package gudgeon.rebuild.tick;

import org.jspecify.annotations.NullMarked;
