/** What a build hands to the next owner: all of its journal and what follows from it, in chapters. */
@NullMarked
package gudgeon.rebuild.record;

import org.jspecify.annotations.NullMarked;
