/** The price of an ingredient, the cost of a preparation and of a drink, each with its workings. */
@NullMarked
package heeltap.cost;

import org.jspecify.annotations.NullMarked;
