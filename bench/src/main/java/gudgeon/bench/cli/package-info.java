/** The command line. */
@NullMarked
package gudgeon.bench.cli;

import org.jspecify.annotations.NullMarked;
