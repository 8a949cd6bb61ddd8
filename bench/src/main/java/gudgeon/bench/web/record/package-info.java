/** The record of a build, made while the person waits. */
@NullMarked
package gudgeon.bench.web.record;

import org.jspecify.annotations.NullMarked;
