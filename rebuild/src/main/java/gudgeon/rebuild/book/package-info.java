/** The engine book: all that is true of one type of engine, read from a text file with every fault at its line. */
@NullMarked
package gudgeon.rebuild.book;

import org.jspecify.annotations.NullMarked;
