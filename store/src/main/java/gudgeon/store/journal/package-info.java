/** Journals as text: each entry one JSON object with its type and version. */
@NullMarked
package gudgeon.store.journal;

import org.jspecify.annotations.NullMarked;
