@NullMarked
package gudgeon.rebuild.measure;

import org.jspecify.annotations.NullMarked;
