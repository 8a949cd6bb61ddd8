@NullMarked
package gudgeon.rebuild.caution;

import org.jspecify.annotations.NullMarked;
