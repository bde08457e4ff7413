/** Sheets to records, with the one definition of each sheet's columns. */
@NullMarked
package heeltap.load;

import org.jspecify.annotations.NullMarked;
