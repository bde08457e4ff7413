/** Money, amounts, units, packs and exact numbers: the only place that rounds money or divides it. */
@NullMarked
package heeltap.quantity;

import org.jspecify.annotations.NullMarked;
