@NullMarked
package gudgeon.rebuild.bore;

import org.jspecify.annotations.NullMarked;
