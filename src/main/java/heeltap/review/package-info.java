/** Runs the calculations for a month into one review and lays it out as a document. */
@NullMarked
package heeltap.review;

import org.jspecify.annotations.NullMarked;
