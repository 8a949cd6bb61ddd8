@NullMarked
package gudgeon.rebuild.alarm;

import org.jspecify.annotations.NullMarked;
