/** The parts list as a file that a spreadsheet reads and writes. */
@NullMarked
package gudgeon.store.source;

import org.jspecify.annotations.NullMarked;
