/** Tests of sentences. */
@NullMarked
package gudgeon.rebuild.sentence;

import org.jspecify.annotations.NullMarked;
