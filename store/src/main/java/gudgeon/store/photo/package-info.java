/** Photos as files, each under the hash of its content. */
@NullMarked
package gudgeon.store.photo;

import org.jspecify.annotations.NullMarked;
