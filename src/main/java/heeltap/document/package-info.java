/** The neutral model of a report: typed tables, findings, charts and sections. */
@NullMarked
package heeltap.document;

import org.jspecify.annotations.NullMarked;
