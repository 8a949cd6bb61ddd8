@NullMarked
package gudgeon.rebuild.book;

import org.jspecify.annotations.NullMarked;
