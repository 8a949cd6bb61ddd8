/** Every reader fed by a coverage-guided fuzzer, and held to what it promises. */
@NullMarked
package gudgeon.fuzz;

import org.jspecify.annotations.NullMarked;
