@NullMarked
package gudgeon.rebuild.desk;

import org.jspecify.annotations.NullMarked;
