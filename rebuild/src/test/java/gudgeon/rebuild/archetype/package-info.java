@NullMarked
package gudgeon.rebuild.archetype;

import org.jspecify.annotations.NullMarked;
