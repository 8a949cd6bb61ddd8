/** What the program tells of itself: its version, what is new, its libraries and its handbook. */
@NullMarked
package gudgeon.bench.about;

import org.jspecify.annotations.NullMarked;
