@NullMarked
package gudgeon.rebuild.sheet;

import org.jspecify.annotations.NullMarked;
