@NullMarked
package gudgeon.rebuild.timing;

import org.jspecify.annotations.NullMarked;
