/** The state of a rebuild: its journal folded over its engine book. */
@NullMarked
package gudgeon.rebuild.build;

import org.jspecify.annotations.NullMarked;
