/** Screw threads: their sizes, how much of them must engage, and at what they strip. */
@NullMarked
package gudgeon.mechanics.thread;

import org.jspecify.annotations.NullMarked;
