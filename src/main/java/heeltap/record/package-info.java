/** What people wrote down: the bar's book and the month's sales, invoices, counts and losses. */
@NullMarked
package heeltap.record;

import org.jspecify.annotations.NullMarked;
