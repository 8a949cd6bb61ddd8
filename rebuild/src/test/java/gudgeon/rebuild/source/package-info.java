/** Tests of sourcing. */
@NullMarked
package gudgeon.rebuild.source;

import org.jspecify.annotations.NullMarked;
