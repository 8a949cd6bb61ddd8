@NullMarked
package gudgeon.rebuild.journal;

import org.jspecify.annotations.NullMarked;
