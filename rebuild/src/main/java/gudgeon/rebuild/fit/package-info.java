/** The trial fit: an engine book and a choice of parts become gaps with their doubt, verdicts, cures and the next measurement. */
@NullMarked
package gudgeon.rebuild.fit;

import org.jspecify.annotations.NullMarked;
