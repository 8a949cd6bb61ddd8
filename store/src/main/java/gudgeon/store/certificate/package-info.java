/** The workshop's own certificates, so that what goes over its network is encrypted. */
@NullMarked
package gudgeon.store.certificate;

import org.jspecify.annotations.NullMarked;
