/** Price suggestions and the price range of a menu. */
@NullMarked
package heeltap.pricing;

import org.jspecify.annotations.NullMarked;
