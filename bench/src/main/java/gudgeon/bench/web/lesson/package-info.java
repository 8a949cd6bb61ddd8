/** The page Next time: what a build taught, for the engine book of the next one. */
@NullMarked
package gudgeon.bench.web.lesson;

import org.jspecify.annotations.NullMarked;
