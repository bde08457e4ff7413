/** Theoretical against actual use, valuation, purchases and journal. */
@NullMarked
package heeltap.stock;

import org.jspecify.annotations.NullMarked;
