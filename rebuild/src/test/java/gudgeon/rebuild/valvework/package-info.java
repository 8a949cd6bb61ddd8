@NullMarked
package gudgeon.rebuild.valvework;

import org.jspecify.annotations.NullMarked;
