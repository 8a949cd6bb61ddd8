@NullMarked
package gudgeon.rebuild.start;

import org.jspecify.annotations.NullMarked;
