/** Verdicts on what was measured: worn or sound, proved or not, and what would prove it. */
@NullMarked
package gudgeon.rebuild.measure;

import org.jspecify.annotations.NullMarked;
