@NullMarked
package gudgeon.mechanics.cure;

import org.jspecify.annotations.NullMarked;
