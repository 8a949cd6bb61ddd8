/** What is to become of each part, and whole ways to go on held against each other: proposed here, decided by the person. */
@NullMarked
package gudgeon.rebuild.decide;

import org.jspecify.annotations.NullMarked;
