/** The pages about Gudgeon itself: what is new, its libraries, and its handbook. */
@NullMarked
package gudgeon.bench.web.about;

import org.jspecify.annotations.NullMarked;
