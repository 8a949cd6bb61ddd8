/** What is measured, with what, and what it proves. */
@NullMarked
package gudgeon.bench.web.measure;

import org.jspecify.annotations.NullMarked;
