/** Files that are packed with the program, for every room that reads one. */
@NullMarked
package gudgeon.bench.packed;

import org.jspecify.annotations.NullMarked;
