/** What a build taught about its type of engine, and how it is written into the text of the engine book. */
@NullMarked
package gudgeon.rebuild.lesson;

import org.jspecify.annotations.NullMarked;
