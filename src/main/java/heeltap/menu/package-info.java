/** Popularity, margin and the published classifications of a menu. */
@NullMarked
package heeltap.menu;

import org.jspecify.annotations.NullMarked;
