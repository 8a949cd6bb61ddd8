@NullMarked
package gudgeon.rebuild.fit;

import org.jspecify.annotations.NullMarked;
