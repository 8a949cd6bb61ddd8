/** True top dead centre, the cam and the spark as a degree disc, a dial gauge and the points tell them, and what to move. */
@NullMarked
package gudgeon.rebuild.timing;

import org.jspecify.annotations.NullMarked;
