/** The Parts page: what to buy, orders and arrivals, inspection of what came, money, and the date. */
@NullMarked
package gudgeon.bench.web.source;

import org.jspecify.annotations.NullMarked;
