/** What can hurt, collected from the steps and checks where it stands, and what comes before all of it. */
@NullMarked
package gudgeon.rebuild.caution;

import org.jspecify.annotations.NullMarked;
