/** The pages: a server for this machine alone, and the rooms it serves. */
@NullMarked
package gudgeon.bench.web;

import org.jspecify.annotations.NullMarked;
