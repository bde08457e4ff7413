/** A document as PDF, workbook and CSV files. */
@NullMarked
package heeltap.report;

import org.jspecify.annotations.NullMarked;
