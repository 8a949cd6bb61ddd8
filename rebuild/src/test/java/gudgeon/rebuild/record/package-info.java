@NullMarked
package gudgeon.rebuild.record;

import org.jspecify.annotations.NullMarked;
