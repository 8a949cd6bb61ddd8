/** How an engine is run in: stages, limits of speed, and what is done at its hours. */
@NullMarked
package gudgeon.rebuild.runin;

import org.jspecify.annotations.NullMarked;
