@NullMarked
package gudgeon.rebuild.runin;

import org.jspecify.annotations.NullMarked;
