@NullMarked
package gudgeon.rebuild.build;

import org.jspecify.annotations.NullMarked;
