/** Names as people write them joined to the names of the book. */
@NullMarked
package heeltap.match;

import org.jspecify.annotations.NullMarked;
