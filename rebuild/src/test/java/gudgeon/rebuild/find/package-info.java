@NullMarked
package gudgeon.rebuild.find;

import org.jspecify.annotations.NullMarked;
