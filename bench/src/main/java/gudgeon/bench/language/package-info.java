/** Pages in another language: every text of the program is looked up in one book of phrases for each language. */
@NullMarked
package gudgeon.bench.language;

import org.jspecify.annotations.NullMarked;
