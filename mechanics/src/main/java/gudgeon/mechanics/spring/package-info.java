/** Helical compression springs: rate, solid height, fitted height, coil bind. */
@NullMarked
package gudgeon.mechanics.spring;

import org.jspecify.annotations.NullMarked;
