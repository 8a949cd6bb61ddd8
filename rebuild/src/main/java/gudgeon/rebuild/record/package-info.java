/** The build record: all that a rebuild leaves to say to whoever has the engine next. */
@NullMarked
package gudgeon.rebuild.record;

import org.jspecify.annotations.NullMarked;
