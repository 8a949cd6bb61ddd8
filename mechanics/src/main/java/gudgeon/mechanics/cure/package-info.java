/** What would bring each gap to what is wanted, and what it costs. */
@NullMarked
package gudgeon.mechanics.cure;

import org.jspecify.annotations.NullMarked;
