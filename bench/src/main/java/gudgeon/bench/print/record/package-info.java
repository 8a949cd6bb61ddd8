/** The record of a build on paper, and as one page that needs nothing else. */
@NullMarked
package gudgeon.bench.print.record;

import org.jspecify.annotations.NullMarked;
