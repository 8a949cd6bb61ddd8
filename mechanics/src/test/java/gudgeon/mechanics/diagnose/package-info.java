@NullMarked
package gudgeon.mechanics.diagnose;

import org.jspecify.annotations.NullMarked;
