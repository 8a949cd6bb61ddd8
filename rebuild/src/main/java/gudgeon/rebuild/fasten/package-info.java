/** Fasteners: which goes where, how long, how tight, with which wrench and in what order. */
@NullMarked
package gudgeon.rebuild.fasten;

import org.jspecify.annotations.NullMarked;
