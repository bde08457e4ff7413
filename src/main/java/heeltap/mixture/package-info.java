/** What a liquid is made of: density, alcohol, sugar, acids and salt. */
@NullMarked
package heeltap.mixture;

import org.jspecify.annotations.NullMarked;
