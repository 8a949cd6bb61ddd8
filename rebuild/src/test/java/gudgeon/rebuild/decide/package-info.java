@NullMarked
package gudgeon.rebuild.decide;

import org.jspecify.annotations.NullMarked;
