/** Looking for a fault: suspects ranked by how well they explain what was felt, read and tried, and the test that tells most for the least undoing. */
@NullMarked
package gudgeon.rebuild.find;

import org.jspecify.annotations.NullMarked;
