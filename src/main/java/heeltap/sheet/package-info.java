/** Files to neutral sheets: encodings, delimiters, workbooks. Knows no drink. */
@NullMarked
package heeltap.sheet;

import org.jspecify.annotations.NullMarked;
