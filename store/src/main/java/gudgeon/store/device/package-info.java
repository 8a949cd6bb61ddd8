/** Which devices on the workshop's network are let in. */
@NullMarked
package gudgeon.store.device;

import org.jspecify.annotations.NullMarked;
