/** How texts become sentences: capitals, stops, lists and amounts, the same in every room. */
@NullMarked
package gudgeon.rebuild.sentence;

import org.jspecify.annotations.NullMarked;
