@NullMarked
package gudgeon.rebuild.compare;

import org.jspecify.annotations.NullMarked;
