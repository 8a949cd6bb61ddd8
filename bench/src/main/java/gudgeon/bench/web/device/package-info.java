/** Phones and tablets on the workshop's network: how far the pages reach, and who is let in. */
@NullMarked
package gudgeon.bench.web.device;

import org.jspecify.annotations.NullMarked;
